import type { components } from './contract.js';
import type { PlanRequest } from './request.js';

export type Plan = components['schemas']['PlanAnswer'];
export type Problem = components['schemas']['Problem'];

/** The service did not plan: a problem document, or no answer at all. */
export class Refusal extends Error {
  constructor(readonly problem: Problem | undefined, readonly retryAfter: number | undefined) {
    super(problem?.detail ?? 'no answer');
  }
}

/** Forms of the same answer that can be kept as files. */
export const files = {
  csv: { accept: 'text/csv', query: '?view=takeoff', name: 'ceiling-order.csv' },
  pdf: { accept: 'application/pdf', query: '', name: 'ceiling-job-sheet.pdf' },
  svg: { accept: 'image/svg+xml', query: '', name: 'ceiling-drawing.svg' },
  xlsx: { accept: 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet', query: '', name: 'ceiling-order.xlsx' },
} as const;

export type FileKind = keyof typeof files;

export class Service {
  constructor(readonly address: string) {}

  async plan(request: PlanRequest, stop: AbortSignal): Promise<Plan> {
    const response = await this.#post('?include=all,drawing', 'application/json', request, stop);
    return (await response.json()) as Plan;
  }

  async file(kind: FileKind, request: PlanRequest): Promise<Blob> {
    const response = await this.#post(files[kind].query, files[kind].accept, request, AbortSignal.timeout(60_000));
    return response.blob();
  }

  async #post(query: string, accept: string, request: PlanRequest, stop: AbortSignal): Promise<Response> {
    let response: Response;
    try {
      response = await fetch(`${this.address}/v1/plans${query}`, {
        method: 'POST',
        headers: { 'Content-Type': 'application/json', Accept: accept },
        body: JSON.stringify(request),
        signal: stop,
        credentials: 'omit',
      });
    } catch (error) {
      stop.throwIfAborted();
      throw new Refusal(undefined, undefined);
    }

    if (response.ok) {
      return response;
    }

    const isProblem = response.headers.get('Content-Type')?.startsWith('application/problem+json') ?? false;
    const wait = Number(response.headers.get('Retry-After') ?? Number.NaN);
    throw new Refusal(isProblem ? ((await response.json()) as Problem) : undefined, Number.isFinite(wait) ? wait : undefined);
  }
}
