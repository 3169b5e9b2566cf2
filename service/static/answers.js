// Shows an answer as what it is: a picture, a page, a table, a pullover, a problem.

import { PageAnswer } from "/docs/page-answer.js";
import { PictureAnswer } from "/docs/picture-answer.js";
import { MarkdownAnswer, ProblemAnswer, PulloverAnswer } from "/docs/readable-answers.js";

export const Answers = ({ React }) => {
  const h = React.createElement;
  const [Markdown, Page, Picture, Problem, Pullover] = [
    MarkdownAnswer,
    PageAnswer,
    PictureAnswer,
    ProblemAnswer,
    PulloverAnswer,
  ].map((component) => component(React));

  // The answer as it came; drawn only when it is opened, since that takes long where it is long.
  const Raw = ({ Original, answer }) => {
    const [open, setOpen] = React.useState(false);
    const toggled = (event) => setOpen(event.target.open);
    return h(
      "details",
      { className: "raw-answer", open, onToggle: toggled },
      h("summary", null, "The answer as it came"),
      open && h(Original, answer),
    );
  };

  const Shown = ({ Original, answer }) => {
    const { content, contentType = "" } = answer;
    const type = contentType.split(";")[0].trim();
    if (typeof content !== "string") return h(Original, answer);
    const saved = { content, type, name: nameIn(answer.headers) };
    if (type === "image/svg+xml") return h(Picture, saved);
    if (type === "text/html") return h(Page, saved);
    const readable = readableOf(type, content);
    if (!readable) return h(Original, answer);
    const [Readable, read] = readable;
    return h(React.Fragment, null, h(Readable, { read }), h(Raw, { Original, answer }));
  };

  const readableOf = (type, content) => {
    if (type === "text/markdown") return [Markdown, content];
    if (type !== "application/json" && type !== "application/problem+json") return null;
    const read = JSON.parse(content);
    if (type === "application/problem+json") return [Problem, read];
    return read.table || read.instructions ? [Pullover, read] : null;
  };

  return {
    wrapComponents: {
      responseBody: (Original) => (answer) => h(Shown, { Original, answer }),
    },
  };
};

// The name that the service gives a file, without its ending (RFC 6266).
function nameIn(headers) {
  const disposition = headers?.["content-disposition"] ?? "";
  const encoded = /filename\*=UTF-8''([^;]+)/i.exec(disposition);
  const plain = /filename="?([^";]+)"?/i.exec(disposition);
  const name = encoded ? decodeURIComponent(encoded[1]) : plain ? plain[1] : "answer";
  return name.replace(/\.\w+$/, "");
}
