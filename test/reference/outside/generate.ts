import { writeFileSync } from 'node:fs';
import { outsideJobs } from './outside-jobs.js';
import { outsidePage, outsidePlot } from './page.js';

/** Writes the page of outside jobs and its plot; a test fails when they are stale. */
writeFileSync('test/reference/outside/outside-jobs.md', outsidePage(outsideJobs));
writeFileSync('test/reference/outside/outside-jobs.svg', outsidePlot(outsideJobs));
