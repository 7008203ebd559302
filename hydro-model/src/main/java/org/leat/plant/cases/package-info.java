/**
 * The plant in each situation that matters: running, shut, the flow stopped, load lost, battery full or removed, the
 * coldest and the hottest day. Uses the solvers and the numbers.
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
@NullMarked
package org.leat.plant.cases;

import org.apiguardian.api.API;
import org.jspecify.annotations.NullMarked;
