/** The words every screen uses are core's own. */
export { choiceWord, quantityAt } from '../core';
