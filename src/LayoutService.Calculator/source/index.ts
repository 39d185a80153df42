import { CeilingCalculator } from './element.js';

if (!customElements.get('ceiling-calculator')) {
  customElements.define('ceiling-calculator', CeilingCalculator);
}

export { CeilingCalculator };
