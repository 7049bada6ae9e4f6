// The least that a program drawn with Ink can be, as one writes it in a first hour: what launching is measured against.
import { render, Text } from "ink";
import { createElement } from "react";

render(createElement(Text, null, process.argv[2]));
// It stays, as a program does that waits for a key.
setInterval(() => {}, 60_000);
