package org.leat.report;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.leat.file.Position;

/** The files of a log in the order in which they are first spoken of. Of a long run the only thing that is kept. */
final class SarifArtifacts {

    private final Map<String, Integer> indexes = new LinkedHashMap<>();

    SarifModel.ArtifactLocation of(String file) {
        String uri = SarifUri.of(file);
        return new SarifModel.ArtifactLocation(uri, indexes.computeIfAbsent(uri, u -> indexes.size()));
    }

    SarifModel.PhysicalLocation at(Position position) {
        return new SarifModel.PhysicalLocation(of(position.file()), region(position));
    }

    static SarifModel.Region region(Position p) {
        return new SarifModel.Region(p.line(), p.column(), p.endLine(), p.endColumn());
    }

    List<SarifModel.Artifact> all() {
        return indexes.keySet().stream()
                .map(uri -> new SarifModel.Artifact(new SarifModel.Uri(uri), List.of("analysisTarget"), "UTF-8"))
                .toList();
    }
}
