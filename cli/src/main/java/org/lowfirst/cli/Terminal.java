package org.lowfirst.cli;

import java.io.InputStream;
import java.io.PrintWriter;
import java.nio.file.Path;

/**
 * Where a command reads and writes.
 *
 * @param in what is piped in
 * @param out results
 * @param err problems, warnings and progress
 * @param blocks whether block and box characters can be shown
 * @param details folder for the details of an unexpected failure
 */
record Terminal(InputStream in, PrintWriter out, PrintWriter err, boolean blocks, Path details) {}
