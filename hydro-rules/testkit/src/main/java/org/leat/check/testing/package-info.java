/**
 * What the tests of a rule's author need, for this project's pack and for any other: examples of one line each, and files
 * of examples with everything that is to be found in them. Uses the checker, the wording of reports and nothing of a test
 * framework.
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
@NullMarked
package org.leat.check.testing;

import org.apiguardian.api.API;
import org.jspecify.annotations.NullMarked;
