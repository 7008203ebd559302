/** What a physical law answers: a number, or the reason why it must not give one. Uses nothing but the JDK. */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
@NullMarked
package org.leat.law;

import org.apiguardian.api.API;
import org.jspecify.annotations.NullMarked;
