// A real table that can be scrolled by itself, with keys too.

// title: its caption. columns: their heads. groups: lists of rows that belong together; a row is a list of cells,
// the first one its head; a cell is text, or a list of texts for lines one below the other.
export const Table = (React) => {
  const h = React.createElement;
  const lines = (cell) => (Array.isArray(cell) ? cell.map((line, place) => h("div", { key: place }, line)) : cell);
  const cells = (row) =>
    row.map((cell, place) => h(place ? "td" : "th", { key: place, scope: place ? undefined : "row" }, lines(cell)));
  return ({ title, columns, groups }) =>
    h(
      "div",
      { "aria-label": title, className: "table-answer", role: "region", tabIndex: 0 },
      h(
        "table",
        null,
        h("caption", null, title),
        h("thead", null, h("tr", null, ...columns.map((column) => h("th", { scope: "col" }, column)))),
        ...groups.map((rows) => h("tbody", null, ...rows.map((row) => h("tr", null, ...cells(row))))),
      ),
    );
};

// The head and the rows of the one table of a Markdown answer.
export function tableInMarkdown(text) {
  const [head, , ...rows] = text.trim().split("\n").map(cellsInMarkdown);
  return { columns: head, rows };
}

const cellsInMarkdown = (line) => line.replace(/^\| | \|$/g, "").split(" | ").map(unescaped);
const unescaped = (cell) => cell.replace(/\\([\\|])/g, "$1").replaceAll("&lt;", "<");
