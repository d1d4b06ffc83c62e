import { Injectable } from '@nestjs/common';

/** Something the service cannot work without; says what is wrong, or undefined. */
export type Requirement = () => Promise<string | undefined>;

/** Whether work can be taken; a stopping service says no before it closes. */
@Injectable()
export class Readiness {
  private readonly requirements: Requirement[] = [];
  private stopping = false;

  require(requirement: Requirement): void {
    this.requirements.push(requirement);
  }

  stop(): void {
    this.stopping = true;
  }

  async obstacle(): Promise<string | undefined> {
    if (this.stopping) return 'The service is stopping.';
    const found = await Promise.all(this.requirements.map((requirement) => requirement()));
    return found.find((obstacle) => obstacle !== undefined);
  }
}
