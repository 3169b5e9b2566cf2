// Buttons above an answer, and what saves it.

// actions: what each does, by what is written on it.
export const buttons = (h, actions) =>
  h(
    "p",
    { className: "answer-buttons" },
    ...Object.entries(actions).map(([name, onClick]) => h("button", { className: "btn", type: "button", onClick }, name)),
  );

// Saves something under a name, as a browser saves a file that is followed.

export function save(blob, name) {
  const link = document.createElement("a");
  link.href = URL.createObjectURL(blob);
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
}
