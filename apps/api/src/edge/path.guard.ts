import { Injectable, type CanActivate, type ExecutionContext } from '@nestjs/common';
import type { Request } from 'express';
import { HttpProblem } from './problems.js';

/** What a part of a path may be, by the name of its parameter; whatever is none of these names nothing that exists. */
export const pathPatterns: Readonly<Record<string, string>> = {
  id: '^[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}$',
  kind: '^[a-z-]{1,40}$',
  name: '^[a-z0-9-]{1,60}$',
};

/** Codes are an organisation's own words: anything that can be written in a line. */
export const otherPathPattern = '^[^\\x00-\\x1f\\x7f]{1,80}$';

const patterns = new Map(Object.entries(pathPatterns).map(([name, text]) => [name, new RegExp(text, 'i')]));
const otherPattern = new RegExp(otherPathPattern, 'u');

/** Looks at each part of a path before anything is asked about it. */
@Injectable()
export class PathGuard implements CanActivate {
  canActivate(context: ExecutionContext): boolean {
    const { params } = context.switchToHttp().getRequest<Request>();
    const strange = Object.entries(params).find(([name, value]) => !fits(name, String(value)));
    if (strange === undefined) return true;
    const [name, value] = strange;
    throw new HttpProblem('not-found', {
      detail: `${JSON.stringify(String(value).slice(0, 60))} is no ${name} of anything here.`,
    });
  }
}

const fits = (name: string, value: string): boolean => (patterns.get(name) ?? otherPattern).test(value);
