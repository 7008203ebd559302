package org.leat.design;

import java.lang.annotation.Documented;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.apiguardian.api.API;

/**
 * Marks the one choice of a sealed interface that a file writes as a plain value instead of a mapping with a
 * {@code kind}: a record of one component.
 */
@API(status = API.Status.INTERNAL, since = "0.1")
@Documented
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.TYPE)
public @interface Plain {}
