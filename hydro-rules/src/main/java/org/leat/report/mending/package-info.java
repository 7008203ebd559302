/**
 * Ways out written into the design's own file, one after the other, and what is left after them. For the command line. Uses
 * the checker and the words of reports.
 */
@API(status = API.Status.INTERNAL, since = "0.1")
@NullMarked
package org.leat.report.mending;

import org.apiguardian.api.API;
import org.jspecify.annotations.NullMarked;
