// Every operation of the contract is asked by its own examples, in each media type that it offers, and once wrongly; Ajv, which shares no code with
// the service, holds each JSON answer against its schema.
import assert from 'node:assert/strict';
import { Ajv2020 } from 'ajv/dist/2020.js';
import addFormats from 'ajv-formats';
import { readFile } from 'node:fs/promises';

type Node = { [member: string]: Node };

const contract = JSON.parse(await readFile(process.argv[3] ?? 'openapi/paddle-api.v1.json', 'utf8')) as Node;
const ajv = new Ajv2020({ strict: false, allErrors: true });
addFormats.default(ajv);
ajv.addSchema(contract, 'contract');

const escaped = (name: string) => name.replaceAll('~', '~0').replaceAll('/', '~1');
const text = (node: Node | undefined) => node as unknown as string | undefined;

/** The pointer of the part itself, where it stands or where its reference leads. */
function found(pointer: string): { node: Node | undefined; pointer: string } {
  const node = pointer.slice(2).split('/').reduce<Node | undefined>(
    (parent, name) => parent?.[name.replaceAll('~1', '/').replaceAll('~0', '~')], contract);
  const reference = text(node?.['$ref']);
  return reference ? found(reference) : { node, pointer };
}

async function hold(answer: Response, responses: string, where: string): Promise<void> {
  const response = [answer.status, 'default'].map((status) => found(`${responses}/${status}`)).find((one) => one.node);
  assert.ok(response, `${where}: ${answer.status} is not in the contract`);
  const type = answer.headers.get('Content-Type')?.split(';')[0] ?? 'none';
  assert.ok(response.node?.['content']?.[type], `${where}: ${type} is not in the contract`);
  for (const [name, header] of Object.entries(response.node['headers'] ?? {})) {
    const required = found(`${response.pointer}/headers/${escaped(name)}`).node?.['required'] as unknown;
    assert.ok(!required || answer.headers.has(name), `${where}: no ${name} (${JSON.stringify(header)})`);
  }

  if (!/\bjson$/.test(type) || type.endsWith('x-ndjson')) {
    assert.ok((await answer.arrayBuffer()).byteLength > 0, `${where}: an empty ${type}`);
    return;
  }

  const fits = ajv.getSchema(`contract${response.pointer}/content/${escaped(type)}/schema`);
  assert.ok(fits, `${where}: no schema for ${type}`);
  const body: unknown = await answer.json();
  assert.ok(fits(body), `${where}: ${ajv.errorsText(fits.errors)}`);

  // A validator that lets everything pass holds nothing.
  assert.ok(!fits({}) || fits.schema === true, `${where}: an empty answer would do too`);
}

export async function everyAnswerFits(baseUrl: string): Promise<string> {
  let operations = 0;
  let answers = 0;
  for (const [template, item] of Object.entries(contract['paths'] ?? {})) {
    for (const method of ['get', 'post'].filter((name) => item[name])) {
      const at = `#/paths/${escaped(template)}/${method}`;
      const operation = item[method] ?? {};
      const parameters = Object.keys(operation['parameters'] ?? {}).map((k) => found(`${at}/parameters/${k}`).node ?? {});
      const path = parameters.filter((one) => text(one['in']) === 'path').reduce(
        (address, one) => address.replace(`{${text(one['name'])}}`, text(one['example']) ?? ''), template);
      const ask = async (init: RequestInit, where: string) => {
        const answer = await fetch(baseUrl + path, { method: method.toUpperCase(), signal: AbortSignal.timeout(60_000), ...init });
        await hold(answer, `${at}/responses`, where);
        answers++;
        return answer.status;
      };

      operations++;
      const offered = Object.keys(found(`${at}/responses/200`).node?.['content'] ?? {});
      const bodies = Object.entries(operation['requestBody']?.['content'] ?? {}).flatMap(([type, content]) =>
        Object.entries(content['examples'] ?? {}).map(([name, example]) => ({ type, name, value: example['value'] as unknown })));
      for (const accept of offered) {
        for (const { type, name, value } of bodies.length > 0 ? bodies : [{ type: '', name: 'address', value: undefined }]) {
          const body = value === undefined ? {} : { body: typeof value === 'string' ? value : JSON.stringify(value) };
          const where = `${text(operation['operationId'])}, ${name}, ${accept}`;
          const status = await ask({ ...body, headers: { Accept: accept, ...(type && { 'Content-Type': type }) } }, where);
          assert.equal(status, 200, where);
        }
      }

      const where = `${text(operation['operationId'])}, asked wrongly`;
      const refusal = bodies.length > 0
        ? await ask({ body: '{"noSuchMember":1', headers: { 'Content-Type': 'application/json' } }, where)
        : await ask({ headers: { Accept: 'application/x-not-on-offer' } }, where);
      assert.ok(refusal >= 400 || template.startsWith('/health/'), where);
    }
  }

  return `${answers} answers of ${operations} operations fit the contract by Ajv`;
}
