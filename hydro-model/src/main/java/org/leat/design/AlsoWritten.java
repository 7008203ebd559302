package org.leat.design;

import java.lang.annotation.Documented;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.apiguardian.api.API;

/**
 * Other ways in which people write the same, read where only one thing can be meant and never written: of a word or of a
 * kind; of a plain number the text around it, {@code #} standing for the number. Small and capital letters are the same,
 * and a blank may be left out, or be a hyphen or an underscore.
 */
@API(status = API.Status.INTERNAL, since = "0.1")
@Documented
@Retention(RetentionPolicy.RUNTIME)
@Target({ElementType.FIELD, ElementType.TYPE, ElementType.RECORD_COMPONENT})
public @interface AlsoWritten {
    /** {@return the other ways} */
    String[] value();
}
