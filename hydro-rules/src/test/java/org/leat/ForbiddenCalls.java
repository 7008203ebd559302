package org.leat;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.lang.ArchRule;
import java.nio.charset.Charset;
import java.util.Locale;

/** Calls that no class of the artifacts above the model makes, said once for the tests of each. */
final class ForbiddenCalls {

    /** Where a result would hang on the machine's locale or character set. */
    static final ArchRule HABITS_OF_THE_ENVIRONMENT = noClasses()
            .should()
            .callMethod(Locale.class, "getDefault")
            .orShould()
            .callMethod(String.class, "format", String.class, Object[].class)
            .orShould()
            .callMethod(String.class, "formatted", Object[].class)
            .orShould()
            .callMethod(String.class, "getBytes")
            .orShould()
            .callMethod(String.class, "toLowerCase")
            .orShould()
            .callMethod(String.class, "toUpperCase")
            .orShould()
            .callMethod(Charset.class, "defaultCharset")
            .because("the same input gives the same bytes on every machine, in every locale and time zone");

    private ForbiddenCalls() {}
}
