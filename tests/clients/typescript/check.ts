// An outfitter's program: every call is typed by the contract, and what comes is looked at.
import assert from 'node:assert/strict';
import createClient from 'openapi-fetch';
import type { components, paths } from './generated/paddle-api.js';
import { everyAnswerFits } from './answers.js';

type Problem = components['schemas']['Problem'];
type DesignRequest = components['schemas']['DesignRequest'];

const baseUrl = process.argv[2] ?? 'http://localhost:5080';
const service = createClient<paths, 'application/json' | 'application/problem+json'>({ baseUrl });
const files = createClient<paths>({ baseUrl });

function held<T>(result: { data?: T; error?: Problem; response: Response }): T {
  if (result.data === undefined) assert.fail(`${result.response.url}: ${result.response.status} ${JSON.stringify(result.error)}`);
  return result.data;
}

const paddle = {
  label: 'Heron Lake hire fleet, size M',
  handSpacingMm: 880,
  blade: { family: 'ottertail', lengthMm: 650, widthMm: 148 },
  wood: { species: 'white-ash' },
  aims: { balanceToleranceMm: 12 },
  drawing: { units: 'metric' },
} satisfies DesignRequest;

const design = held(await service.POST('/v1/designs', { body: paddle }));
assert.equal(design.outcome, 'met');
assert.equal(design.design.wood.species, 'white-ash');
assert.equal(design.lengths.lowerHandMm - design.lengths.topHandMm, paddle.handSpacingMm);
assert.ok(Math.abs(design.balance.offsetMm) <= paddle.aims.balanceToleranceMm, `balanced ${design.balance.offsetMm} mm off`);
assert.ok(design.strength.cases.some((one) => one.id === design.strength.governingCase));

const path = { designCode: design.designCode };
const opened = held(await service.GET('/v1/designs/{designCode}', { params: { path } }));
assert.deepEqual([opened.lengths, opened.stations, opened.mass, opened.links], [design.lengths, design.stations, design.mass, design.links]);
const slim = held(await service.GET('/v1/designs/{designCode}', { params: { path, query: { fields: 'mass' } } }));
assert.deepEqual(slim.mass, design.mass);

const fitting = held(await service.POST('/v1/fittings', {
  body: {
    paddler: { handSpacingMm: 880, statureMm: 1740, bodyMassKg: 78 },
    seat: { posture: 'kneeling', place: 'stern' },
    water: { kind: 'deep-lake' },
  },
}));
assert.ok(fitting.overallLengthMm.low <= fitting.overallLengthMm.value && fitting.overallLengthMm.value <= fitting.overallLengthMm.high);
assert.equal(held(await service.POST('/v1/designs', { body: fitting.design })).outcome, 'met');

const run = held(await service.POST('/v1/size-runs', { body: { sizes: 3, fleetCount: 24, population: { men: 55, women: 45 } } }));
assert.equal(run.sizes.length, 3);
assert.equal(run.sizes.reduce((sum, size) => sum + (size.count ?? 0), 0), 24);

const cherry = { ...paddle, wood: { species: 'black-cherry' } } satisfies DesignRequest;
const comparison = held(await service.POST('/v1/comparisons', { body: { designs: [{ id: 'ash', designCode: design.designCode }, { id: 'cherry', design: cherry }] } }));
assert.deepEqual(comparison.designs.map((one) => one.id), ['ash', 'cherry']);
const mass = comparison.figures.find((figure) => figure.pointer === '/mass/finishedG');
assert.equal(mass?.values[0], design.mass.finishedG);

const outline = held(await files.GET('/v1/designs/{designCode}/outline.svg', { params: { path, query: { units: 'metric' } }, parseAs: 'text' }));
assert.match(outline, /^<svg [^>]*width="[\d.]+mm"/);
const drawn = held(await files.POST('/v1/designs', { body: paddle, headers: { Accept: 'image/svg+xml' }, parseAs: 'text' }));
assert.match(drawn, /^<svg /);
const templates = held(await files.GET('/v1/designs/{designCode}/templates.pdf', { params: { path, query: { paper: 'letter' } }, parseAs: 'arrayBuffer' }));
assert.equal(new TextDecoder().decode(templates.slice(0, 5)), '%PDF-');
const lines = held(await files.POST('/v1/design-batches', {
  body: `${JSON.stringify(paddle)}\n${JSON.stringify(cherry)}\n`,
  bodySerializer: (text) => text,
  headers: { 'Content-Type': 'application/x-ndjson' },
  parseAs: 'text',
})).trim().split('\n');
assert.deepEqual(lines.map((line) => (JSON.parse(line) as { status: number }).status), [200, 200]);

// A refusal is typed, and says where and within what.
const refused = await service.POST('/v1/designs', { body: { ...paddle, handSpacingMm: 88 } });
assert.equal(refused.error?.type, '/problems/invalid-values');
const fault = refused.error.errors?.['/handSpacingMm']?.[0];
assert.deepEqual([fault?.code, fault?.unit, fault?.value], ['out-of-range', 'mm', 88]);
assert.ok(88 < (fault?.min ?? 0));

// The compiler refuses a wood that is in no catalogue, a member that no design has, and a design without wood.
// @ts-expect-error
const noSuchWood: DesignRequest = { handSpacingMm: 880, wood: { species: 'ironwood' } };
// @ts-expect-error
const noSuchMember: DesignRequest = { handSpacing: 880, wood: { species: 'white-ash' } };
// @ts-expect-error
const noWood: DesignRequest = { handSpacingMm: 880 };
for (const body of [noSuchWood, noSuchMember, noWood]) {
  const { response, error } = await service.POST('/v1/designs', { body });
  assert.ok([400, 422].includes(response.status) && error?.requestId === response.headers.get('X-Request-Id'));
}

const answers = await everyAnswerFits(baseUrl);
console.log(`a design of ${design.mass.totalG} g, a fitting, ${run.sizes.length} sizes, a comparison, SVG, PDF and refusals; ${answers}`);
