/**
 * A kit for testing rules, with one line for each example or with pairs of files, for this project's pack and for any
 * other. Uses the checker, the wording of reports and nothing of a test framework.
 */
@NullMarked
package org.leat.report.testing;

import org.jspecify.annotations.NullMarked;
