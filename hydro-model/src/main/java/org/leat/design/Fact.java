package org.leat.design;

import java.lang.annotation.Documented;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.apiguardian.api.API;

/**
 * A field that says what a thing is marked, made or measured to be: what it stands, what it was read at. A program may
 * advise another thing; it never writes that the one on hand is another.
 */
@API(status = API.Status.STABLE, since = "0.1")
@Documented
@Retention(RetentionPolicy.RUNTIME)
@Target({ElementType.RECORD_COMPONENT, ElementType.METHOD, ElementType.PARAMETER})
public @interface Fact {}
