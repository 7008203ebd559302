package org.leat.design;

import java.lang.annotation.Documented;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.apiguardian.api.API;

/**
 * A field that a file may leave out. It stands at every component that is {@code @Nullable}, and is what readers, writers
 * and builders go by: JSpecify's mark is for compilers, its class need not be there when a program runs, and an annotation
 * without its class is not seen. Lists and mappings by name need none: left out they are empty. A list that has it tells
 * nothing where it is left out, and none where it is empty.
 */
@API(status = API.Status.INTERNAL, since = "0.1")
@Documented
@Retention(RetentionPolicy.RUNTIME)
@Target({ElementType.RECORD_COMPONENT, ElementType.METHOD, ElementType.PARAMETER})
public @interface CanBeAbsent {}
