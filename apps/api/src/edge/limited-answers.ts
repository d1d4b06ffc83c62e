import { Injectable, type CallHandler, type ExecutionContext, type NestInterceptor } from '@nestjs/common';
import { map, type Observable } from 'rxjs';
import { keepToLimits } from './answer-limits.js';

/** Looks at whatever a route returns; one that sends its own text does so by `shownJson` or by itself. */
@Injectable()
export class LimitedAnswers implements NestInterceptor {
  intercept(_: ExecutionContext, next: CallHandler): Observable<unknown> {
    return next.handle().pipe(
      map((answer: unknown) => {
        keepToLimits(answer);
        return answer;
      }),
    );
  }
}
