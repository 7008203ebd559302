/**
 * What single parts bear or need in the situations of {@code cases}: thrust on anchors, bearings, buckets and jets, closing
 * times, heat of windings and bridges, air of the battery room. For the rules of this project.
 */
@API(status = API.Status.INTERNAL, since = "0.1")
@NullMarked
package org.leat.plant.duties;

import org.apiguardian.api.API;
import org.jspecify.annotations.NullMarked;
