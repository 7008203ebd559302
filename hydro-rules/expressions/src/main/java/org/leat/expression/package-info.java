/**
 * Conditions over a plant in the Common Expression Language: values have kinds, so that a pressure is never compared with
 * a length; names are checked before anything runs; nothing but the plant can be reached; the work is bounded. Uses the
 * model and knows nothing of rules.
 */
@API(status = API.Status.INTERNAL, since = "0.1")
@NullMarked
package org.leat.expression;

import org.apiguardian.api.API;
import org.jspecify.annotations.NullMarked;
