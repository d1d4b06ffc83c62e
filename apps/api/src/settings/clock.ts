/** The time of day, asked of one thing where what is in force depends on it, so that a test can say what time it is. */
export class Clock {
  now(): Date {
    return new Date();
  }
}
