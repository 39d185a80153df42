import type { components } from './contract.js';
import type { Units } from './lengths.js';

type Schemas = components['schemas'];

/** What a yard sells, as its page hands it over: members of the contract, each optional. */
export interface CatalogueData {
  units?: Units;
  currency?: string;
  straps?: Schemas['StickStockRequest'][];
  sheets?: Schemas['SheetStockRequest'][];
  batts?: Schemas['BattRequest'][];
  items?: Schemas['PricedItemRequest'][];
}

/** The yard's stock and prices, or the usual lengths where it names none. */
export class Catalogue {
  readonly units: Units | undefined;
  readonly currency: string;
  readonly batts: Schemas['BattRequest'][];
  readonly items: Schemas['PricedItemRequest'][];

  constructor(readonly data: CatalogueData = {}) {
    this.units = data.units;
    this.currency = data.currency ?? '';
    this.batts = data.batts ?? [];
    this.items = data.items ?? [];
  }

  get isPriced(): boolean {
    return [...(this.data.straps ?? []), ...(this.data.sheets ?? []), ...this.batts].some(item => item.packPrice !== undefined);
  }

  strapsFor(units: Units): Schemas['StickStockRequest'][] {
    return (this.#serves(units) ? this.data.straps : undefined) ?? usualStraps[units];
  }

  sheetsFor(units: Units): Schemas['SheetStockRequest'][] {
    return (this.#serves(units) ? this.data.sheets : undefined) ?? usualSheets[units];
  }

  /** A catalogue without units is of the units that the widget has. */
  #serves(units: Units): boolean {
    return this.units === undefined || this.units === units;
  }
}

const usualStraps: Record<Units, Schemas['StickStockRequest'][]> = {
  imperial: [8, 10, 12, 14, 16].map(feet => ({ id: `strap-${feet}ft`, length: feet * 12 })),
  metric: [2400, 3000, 3600, 4200, 4800].map(length => ({ id: `strap-${length}`, length })),
};

const usualSheets: Record<Units, Schemas['SheetStockRequest'][]> = {
  imperial: [8, 10, 12].map(feet => ({ id: `sheet-${feet}ft`, width: 48, length: feet * 12 })),
  metric: [2400, 3000, 3600].map(length => ({ id: `sheet-${length}`, width: 1200, length })),
};
