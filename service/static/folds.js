// Folds away what is looked up, so that what is done first stands in sight.

export const Folds = ({ React }) => {
  const h = React.createElement;

  // The contract's introduction, how to start, and its chapters (headings of the second level) folded.
  const information = (Original) => (props) => {
    const [introduction, ...chapters] = props.specSelectors.selectInfoDescriptionField().split(/^## /m);
    const specSelectors = { ...props.specSelectors, selectInfoDescriptionField: () => introduction };
    const Markdown = props.getComponent("Markdown", true);
    return h(
      "div",
      { role: "banner" },
      h(Original, { ...props, specSelectors }),
      h(
        "div",
        { className: "introduction" },
        h(
          "p",
          null,
          "To start, ",
          h("a", { href: "#/Garment/pullovers" }, "open the first operation"),
          " and press ",
          h("strong", null, "Execute"),
          ". Its request is ready to be changed; what you change stays in this page’s address, which can be shared.",
        ),
        ...chapters.map((chapter) => {
          const end = chapter.indexOf("\n");
          const summary = h("summary", null, h("h2", null, chapter.slice(0, end)));
          return h("details", null, summary, h(Markdown, { source: chapter.slice(end) }));
        }),
      ),
    );
  };

  // Every answer but the one that was asked for.
  const response = (Original) => (props) => {
    const [open, setOpen] = React.useState(false);
    if (props.code === "200") return h(Original, props);
    const button = { "aria-expanded": open, className: "fold", type: "button", onClick: () => setOpen(!open) };
    const name = `${props.code}: ${AT_FAULT[props.code[0]]}`;
    return h(
      React.Fragment,
      null,
      h("tr", null, h("td", { colSpan: 3 }, h("button", button, name))),
      open && h(Original, props),
    );
  };

  // The headers of a request below its body, which comes first.
  const parameters = (Original) => (props) => {
    const isHeader = (parameter) => parameter.get("in") === "header";
    const others = props.parameters.filterNot(isHeader);
    return h(
      React.Fragment,
      null,
      (others.size > 0 || props.operation.has("requestBody")) && h(Original, { ...props, parameters: others }),
      h(
        "details",
        { className: "request-headers" },
        h("summary", null, "Headers of the request"),
        h(Original, {
          ...props,
          operation: props.operation.delete("requestBody"),
          parameters: props.parameters.filter(isHeader),
        }),
      ),
    );
  };

  const curl = (Original) => (props) =>
    h("details", { className: "request-as-sent" }, h("summary", null, "The request for a command line"), h(Original, props));

  const nothing = () => () => null;

  return {
    wrapComponents: {
      curl,
      OAS31Info: information,
      parameters,
      response,
      ServersContainer: nothing, // there is but this installation
      TryItOutButton: nothing, // always on
    },
  };
};

const AT_FAULT = {
  3: "not changed",
  4: "what is wrong with a request",
  5: "what is wrong with the service",
};
