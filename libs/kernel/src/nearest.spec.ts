import { expect, test } from '@jest/globals';
import { didYouMean, nearest } from './nearest.js';

const fields = ['thicknessMm', 'widthMm', 'lengthMm', 'cellMm', 'shearDelamination'];

test.each([
  ['ticknessMm', 'thicknessMm'],
  ['thickness_mm', 'thicknessMm'],
  ['thcikness', 'thicknessMm'],
  ['widhtMm', 'widthMm'],
  ['shearDelam', 'shearDelamination'],
])('%s meant %s', (given, meant) => {
  expect(nearest(given, fields)[0]).toBe(meant);
});

test('what is near to nothing gets no hint', () => {
  expect(didYouMean('colour', fields)).toBe('');
  expect(didYouMean('ticknessMm', fields)).toBe(' (did you mean thicknessMm?)');
});

test('neighbours swapped are one step, and the nearer comes first', () => {
  expect(nearest('epoxy-305', ['epoxy-503', 'epoxy-350', 'epoxy-305-fast'])).toEqual([
    'epoxy-305-fast',
    'epoxy-350',
    'epoxy-503',
  ]);
});
