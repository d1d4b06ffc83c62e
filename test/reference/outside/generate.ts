import { writeFileSync } from 'node:fs';
import { outsideJobs } from './outside-jobs.js';
import { outsidePage } from './report.js';

/** Writes the page of outside jobs; a test fails when it is stale. */
writeFileSync('test/reference/outside/outside-jobs.md', outsidePage(outsideJobs));
