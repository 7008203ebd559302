/**
 * What a builder is to know, do and tell first: the verdict, what the plant gives, causes, the least plan, the inputs that
 * settle most, and the numbers as they were understood. Every change named was carried out on the design and judged again.
 * Formats no text. Uses the checker; used by reports and the command line.
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
@NullMarked
package org.leat.choice;

import org.apiguardian.api.API;
import org.jspecify.annotations.NullMarked;
