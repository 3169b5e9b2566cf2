// Gives controls of Swagger UI the names and the keys that it leaves out.

export const Names = ({ React }) => {
  const h = React.createElement;

  // A component in which elements get an attribute once they are drawn. value: of it, from the component's properties.
  const within = (selector, attribute, value) => (Original) => (props) => {
    const place = React.useRef(null);
    React.useEffect(() => {
      place.current.querySelectorAll(selector).forEach((element) => element.setAttribute(attribute, value(props)));
    });
    return h("div", { className: "named", ref: place }, h(Original, props));
  };

  const scrolledByKeys = within("pre", "tabindex", () => 0);
  const withProperties = (given) => (Original) => (props) => h(Original, { ...given(props), ...props });

  return {
    wrapComponents: {
      curl: scrolledByKeys,
      // A link inside the button that opens its operation would be a control inside a control.
      DeepLink: () => ({ text }) => h("span", null, text),
      ExamplesSelect: within("select", "aria-label", () => "Examples"),
      FilterContainer: (Original) => (props) => h("div", { role: "search" }, h(Original, props)),
      HighlightCode: scrolledByKeys,
      Input: withProperties(({ type }) => (type === "file" ? { "aria-label": "File" } : {})),
      JsonSchemaForm: within("input, select, textarea", "aria-label", ({ description }) => description),
      TextArea: withProperties(() => ({ "aria-label": "Request body", spellCheck: false })),
    },
  };
};
