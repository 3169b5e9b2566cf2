// Answers that are read before they are processed: what they say, ahead of how they say it to programs.

import { Table, tableInMarkdown } from "/docs/tables.js";

export const MarkdownAnswer = (React) => {
  const h = React.createElement;
  const Tabled = Table(React);
  return ({ read }) => {
    const { columns, rows } = tableInMarkdown(read);
    return h("div", { className: "answer" }, h(Tabled, { title: "Table", columns, groups: [rows] }));
  };
};

export const PulloverAnswer = (React) => {
  const h = React.createElement;
  const Tabled = Table(React);
  const sentences = (told) => told.map(({ text }, place) => h("p", { key: place }, text));
  return ({ read }) => {
    const { table, instructions = [], labels, warnings = [], sizes = [] } = read;
    const words = [...warnings.map(inWords), ...sizes.filter(({ reason }) => reason).map(whyNot)];
    return h(
      "div",
      { className: "answer" },
      table && h(Tabled, { title: "Table", columns: ["Quantity", "Unit", ...labels], groups: byPart(table) }),
      words.length > 0 && [h("h4", { key: "title" }, "Warnings"), h("ul", { key: "list" }, ...listed(words))],
      instructions.length > 0 && h("h4", null, "Instructions"),
      ...instructions.map((part) =>
        h("section", { lang: read.language }, h("h5", null, part.title), ...sentences(part.sentences)),
      ),
    );
  };

  function listed(all) {
    return all.map((each) => h("li", null, each));
  }
};

export const ProblemAnswer = (React) => {
  const h = React.createElement;
  return ({ read: { title, detail, errors = [] } }) =>
    h(
      "div",
      { className: "answer" },
      h("h4", null, title),
      h("p", null, detail),
      h(
        "ul",
        null,
        ...errors.map(({ pointer, parameter, detail: wrong }) =>
          h("li", null, h("code", null, parameter ?? pointer), " ", wrong),
        ),
      ),
    );
};

const inWords = ({ size, message }) => (size ? `${size}: ${message}` : message);
const whyNot = ({ label, reason }) => `${label}: ${reason}`;

// The rows of a pullover's table, those of a part together; a length is in centimetres above, in inches below.
function byPart(table) {
  const groups = Map.groupBy(table, ({ part }) => part);
  return [...groups.values()].map((rows) => rows.map(printedRow));
}

function printedRow({ title, unit, printed, printed_inch: inches }) {
  if (!inches) return [title, unit === "cm" ? unit : "", ...printed];
  return [title, ["cm", "in"], ...printed.map((cm, place) => [cm, inches[place]])];
}
