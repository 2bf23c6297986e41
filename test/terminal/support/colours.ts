/** Imported before Ink: colours are decided when it is loaded, and a test has no terminal to ask. */
process.env.FORCE_COLOR = '1'
