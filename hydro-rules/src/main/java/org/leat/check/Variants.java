package org.leat.check;

import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.leat.design.Alternative;
import org.leat.design.Design;
import org.leat.design.ElementPath;
import org.leat.file.Names;

/** A design's alternatives, each as the whole design it would be. */
final class Variants {

    private Variants() {}

    /**
     * One alternative carried out.
     *
     * @param name what it is called
     * @param design with the parts replaced and without alternatives
     * @param replaced first fields of the paths that the alternative replaces
     * @param path of the alternative in the design
     */
    record Variant(String name, Design design, Set<String> replaced, String path) {

        /** {@return where an element of this variant stands in the file of the design} */
        String standsAt(String elementPath) {
            String field = elementPath.substring(1).split("[/\\[]", 2)[0];
            return replaced.contains(field) ? path + elementPath : elementPath;
        }
    }

    static List<Variant> of(Design design) {
        List<Variant> variants = new ArrayList<>();
        List<Alternative> alternatives = design.alternatives();
        for (int i = 0; i < alternatives.size(); i++) {
            String path = ElementPath.item(ElementPath.field(ElementPath.ROOT, "alternatives"), alternatives, i);
            variants.add(variant(design, alternatives.get(i), path));
        }
        return variants;
    }

    private static Variant variant(Design design, Alternative alternative, String path) {
        List<Edit> edits = new ArrayList<>();
        Set<String> replaced = new TreeSet<>();
        for (RecordComponent component : Alternative.class.getRecordComponents()) {
            Object part = DesignEdits.value(alternative, component);
            boolean given = part instanceof List<?> list ? !list.isEmpty() : part != null;
            if (given && !component.getName().equals("name")) {
                String field = Names.ofComponent(component.getName());
                replaced.add(field);
                edits.add(new Edit(ElementPath.field(ElementPath.ROOT, field), part));
            }
        }
        edits.add(new Edit("/alternatives", List.of()));
        return new Variant(alternative.name(), DesignEdits.apply(design, edits), replaced, path);
    }
}
