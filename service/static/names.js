// Gives controls of Swagger UI the names and the keys that it leaves out.

export const Names = ({ React }) => {
  const h = React.createElement;

  // A component within which elements get attributes once they are drawn: {selector: {attribute: value}}.
  const within = (attributes) => (Original) => (props) => {
    const place = React.useRef(null);
    React.useEffect(() => {
      for (const [selector, given] of Object.entries(attributes)) {
        for (const element of place.current.querySelectorAll(selector)) {
          for (const [name, value] of Object.entries(given)) element.setAttribute(name, value);
        }
      }
    });
    return h("div", { className: "named", ref: place }, h(Original, props));
  };

  return {
    wrapComponents: {
      // A link inside the button that opens its operation would be a control inside a control.
      DeepLink: () => ({ text }) => h("span", null, text),
      ExamplesSelect: within({ select: { "aria-label": "Examples" } }),
      HighlightCode: within({ pre: { tabindex: "0" } }),
      TextArea: (Original) => (props) => h(Original, { "aria-label": "Request body", spellCheck: false, ...props }),
    },
  };
};
