import { Controller, Get, Param } from '@nestjs/common';
import { ApiExcludeController } from '@nestjs/swagger';
import { problemWords } from '#lib/kernel';
import { Public } from './public.js';
import { notFound, problemKinds } from './problems.js';

/** The `type` of every problem document leads here, as RFC 9457 asks. */
@ApiExcludeController()
@Controller('problems')
@Public()
export class ProblemsController {
  @Get()
  all(): { readonly kinds: typeof problemKinds; readonly codes: typeof problemWords } {
    return { kinds: problemKinds, codes: problemWords };
  }

  @Get(':kind')
  one(@Param('kind') kind: string): {
    readonly kind: string;
    readonly status: number;
    readonly title: string;
  } {
    const found = Object.entries(problemKinds).find(([known]) => known === kind);
    if (found === undefined) throw notFound(`The problem kind ${JSON.stringify(kind.slice(0, 40))}`);
    return { kind, ...found[1] };
  }
}
