// What is asked stays in the address, behind the place of its operation, where no server gets it:
//   /docs#/Garment/pullovers?example=a-gauge-alone
//   /docs#/Garment/pullovers?request={"gauge": ...}

const LONGEST = 100_000;
const PAUSE = 300; // milliseconds without an edit
const TOO_LONG = "This request is too long for the address: to share it, save it as a file.";

// Takes out of the address what it asks, before Swagger UI reads it, which knows no more than places.
export function takeFromAddress() {
  const [place, query = ""] = location.hash.split(/\?(.*)/s);
  const [tag, operationId] = place.replace(/^#\/?/, "").split("/").map(decodeURIComponent);
  const asked = new URLSearchParams(query);
  history.replaceState(null, "", location.pathname + location.search);
  return { tag, operationId, example: asked.get("example"), request: asked.get("request") };
}

// Opens what the address asks, and writes there what is asked from then on.
export const Address =
  (atFirst) =>
  ({ React }) => {
    let pending = null;

    const updateJsonSpec = (original, system) => (contract) => {
      const updated = original(contract);
      open(system, contract, atFirst);
      return updated;
    };

    const setRequestBodyValue = (original, system) => (change) => {
      const changed = original(change);
      clearTimeout(pending);
      pending = setTimeout(() => write(system, change.pathMethod), PAUSE);
      return changed;
    };

    // Swagger UI selects the first example whenever it draws the list, which would undo what was asked.
    const ExamplesSelect = (Original) => (props) => {
      const isSelected = props.examples.has(props.currentExampleKey);
      const onSelect = (key, how) => (isSelected && how?.isSyntheticChange ? undefined : props.onSelect(key, how));
      return React.createElement(Original, { ...props, onSelect });
    };

    return {
      statePlugins: {
        spec: { wrapActions: { updateJsonSpec } },
        oas3: { wrapActions: { setRequestBodyValue } },
      },
      wrapComponents: { ExamplesSelect },
      // A link into this page that is followed while it is open.
      afterLoad: (system) =>
        addEventListener("hashchange", () =>
          open(system.getSystem(), system.specSelectors.specJson().toJS(), takeFromAddress()),
        ),
    };
  };

function open(system, contract, asked) {
  const { tag, operationId } = asked;
  if (!tag) return;
  system.layoutActions.show(["operations-tag", tag], true);
  if (!operationId) return;
  fillIn(system, contract, asked);
  system.layoutActions.show(["operations", tag, operationId], true);
  system.layoutActions.scrollTo(["operations", tag, operationId]);
}

function fillIn({ oas3Actions }, contract, { operationId, example, request }) {
  const pathMethod = operationAt(contract, operationId);
  const known = pathMethod ? examplesOf(contract, pathMethod) : {};
  const [first] = Object.keys(known);
  if (!first || (example === null && request === null)) return;
  const name = example ?? first;
  if (!known[name]) return say(`There is no example “${name}”.`);
  const value = request === null ? rewritten(JSON.stringify(known[name].value), 2) : rewritten(request, 2);
  oas3Actions.setActiveExamplesMember({ contextName: "requestBody", contextType: "requestBody", name, pathMethod });
  oas3Actions.setRetainRequestBodyValueFlag({ value: true, pathMethod });
  oas3Actions.setRequestBodyValue({ pathMethod, value });
}

function write({ layoutSelectors, oas3Selectors, specSelectors }, pathMethod) {
  const contract = specSelectors.specJson().toJS();
  const [path, method] = pathMethod;
  const { operationId, tags } = contract.paths[path][method];
  const shown = oas3Selectors.requestBodyValue(path, method);
  if (typeof shown !== "string" || !layoutSelectors.isShown(["operations", tags[0], operationId], false)) return;
  const place = `#/${encodeURIComponent(tags[0])}/${encodeURIComponent(operationId)}`;
  const query = asQuery(rewritten(shown), Object.entries(examplesOf(contract, pathMethod)));
  const fits = query.length <= LONGEST;
  if (!fits) say(TOO_LONG);
  else if (query || note().textContent === TOO_LONG) say("");
  history.replaceState(null, "", fits ? place + query : place);
}

// Nothing for the first example, which stands there anyway; the name of another; else the request itself.
function asQuery(request, examples) {
  const same = examples.findIndex(([, { value }]) => JSON.stringify(value) === request);
  if (same === 0) return "";
  return "?" + new URLSearchParams(same > 0 ? { example: examples[same][0] } : { request });
}

function operationAt(contract, operationId) {
  for (const [path, methods] of Object.entries(contract.paths)) {
    for (const [method, operation] of Object.entries(methods)) {
      if (operation.operationId === operationId) return [path, method];
    }
  }
  return null;
}

const examplesOf = (contract, [path, method]) =>
  contract.paths[path][method].requestBody?.content["application/json"]?.examples ?? {};

// A request with another indent, or none; one that isn't JSON yet stays as it is.
function rewritten(request, indent) {
  try {
    return JSON.stringify(JSON.parse(request), null, indent);
  } catch {
    return request;
  }
}

const note = () => document.getElementById("note");

function say(words) {
  note().textContent = words;
}
