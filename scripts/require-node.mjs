// npm scripts find the Node pinned in the lockfile first; this says so in one sentence when it is missing or too old.
const major = Number(process.versions.node.split('.')[0]);
if (major < 22) {
  console.error(
    `This tool chain needs Node 22 or newer (found ${process.versions.node}); run "npm ci" without --omit=optional so that the pinned Node is installed.`,
  );
  process.exit(1);
}
