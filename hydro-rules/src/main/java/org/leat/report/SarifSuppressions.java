package org.leat.report;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.leat.check.Suppression;
import org.leat.design.ElementPath;

/** Suppressions as the standard has them; a list without any says that nobody suppresses the result. */
final class SarifSuppressions {

    private SarifSuppressions() {}

    static List<SarifModel.Suppression> of(@Nullable Suppression s, SarifPlaces places) {
        if (s == null) {
            return List.of();
        }
        Map<String, Object> properties = new LinkedHashMap<>();
        if (s.by() != null) {
            properties.put("by", s.by());
        }
        if (s.danger()) {
            properties.put("danger", "accepted");
        }
        if (s.until() != null) {
            properties.put("until", s.until().toString());
        }
        return List.of(new SarifModel.Suppression(
                s.inDesign() ? "inSource" : "external",
                "accepted",
                s.reason(),
                places.of(s.position(), ElementPath.ROOT).get(0),
                properties.isEmpty() ? null : properties));
    }
}
