// An HTML answer as a page in a frame of its own, where no script runs.

import { buttons, save } from "/docs/saving.js";

export const PageAnswer = (React) => {
  const h = React.createElement;
  return ({ content, type, name }) => {
    const frame = React.useRef(null);
    const print = () => frame.current.contentWindow.print();
    const savePage = () => save(new Blob([content], { type }), `${name}.html`);
    return h(
      "div",
      { className: "answer" },
      buttons(h, { "Print": print, "Save page": savePage }),
      h("iframe", {
        className: "page-answer",
        ref: frame,
        // Of our origin, so that it can be printed from here; no scripts.
        sandbox: "allow-same-origin allow-modals",
        srcDoc: content,
        title: titleOf(content),
      }),
    );
  };
};

const titleOf = (content) => new DOMParser().parseFromString(content, "text/html").title || "The page";
