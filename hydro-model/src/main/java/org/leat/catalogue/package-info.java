/**
 * The tables a plant is derived with: a {@link org.leat.catalogue.Catalogue} is the tables shipped,
 * or some of one's own. Numbers are in SI. What their rows say is in {@code catalogue.rows}, the
 * tables themselves in {@code catalogue.tables}. May use {@code law} and
 * {@code design}.
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
@NullMarked
package org.leat.catalogue;

import org.apiguardian.api.API;
import org.jspecify.annotations.NullMarked;
