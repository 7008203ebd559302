package org.leat.choice;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.leat.check.DesignEdits;
import org.leat.check.Edit;
import org.leat.design.Cable;
import org.leat.design.Design;
import org.leat.design.Place;
import org.leat.design.ProtectiveDevice;

/**
 * Changes that add to a list of a design: a fuse to the protection, a run to the cables. Each is told as the whole list and adds to
 * the design as it stands, so that two of them, or one and a change of an item, do not replace each other.
 */
final class AddedItems {

    private final Design base;

    AddedItems(Design base) {
        this.base = base;
    }

    private static @Nullable List<?> listed(Design design, String path) {
        return switch (path) {
            case "/protection" -> design.protection();
            case "/cables" -> design.cables();
            default -> null;
        };
    }

    /** {@return what an edit adds behind the items of a design; none where it does anything else} */
    private static List<Object> added(Design design, Edit edit) {
        List<?> now = listed(design, edit.path());
        return now != null
                        && edit.value() instanceof List<?> then
                        && then.size() > now.size()
                        && then.subList(0, now.size()).equals(now)
                ? List.copyOf(then.subList(now.size(), then.size()))
                : List.of();
    }

    /** {@return whether both can be carried out: neither replaces what the other changes, or adds another in the same place} */
    boolean goTogether(List<Edit> some, List<Edit> others) {
        for (Edit mine : some) {
            for (Edit its : others) {
                if ((covers(mine.path(), its.path()) || covers(its.path(), mine.path())) && !sideBySide(mine, its)) {
                    return false;
                }
            }
        }
        return true;
    }

    private boolean sideBySide(Edit one, Edit other) {
        List<Object> mine = added(base, one);
        List<Object> its = added(base, other);
        if (one.path().equals(other.path())) {
            return !mine.isEmpty()
                    && !its.isEmpty()
                    && mine.stream()
                            .noneMatch(a -> its.stream()
                                    .anyMatch(b -> !a.equals(b) && joined(a).equals(joined(b))));
        }
        return !mine.isEmpty() || !its.isEmpty(); // the other is within an item that stays
    }

    /** What an item joins, in either direction. */
    private static Set<Place> joined(Object item) {
        return item instanceof ProtectiveDevice device
                ? EnumSet.of(device.from(), device.to())
                : item instanceof Cable run ? Set.of(run.from(), run.to()) : Set.of();
    }

    private static boolean covers(String outer, String inner) {
        return inner.startsWith(outer)
                && (inner.length() == outer.length()
                        || inner.charAt(outer.length()) == '/'
                        || inner.charAt(outer.length()) == '[');
    }

    /** {@return the same changes with all that is added to a list in one edit, first, so that none undoes another} */
    List<Edit> together(List<Edit> edits) {
        Map<String, List<Object>> lists = new LinkedHashMap<>();
        List<Edit> rest = new ArrayList<>();
        for (Edit edit : edits) {
            List<Object> more = added(base, edit);
            List<?> now = listed(base, edit.path());
            if (more.isEmpty() || now == null) {
                rest.add(edit);
            } else {
                List<Object> all = lists.computeIfAbsent(edit.path(), p -> new ArrayList<>(now));
                more.stream().filter(item -> !all.contains(item)).forEach(all::add);
            }
        }
        List<Edit> together = new ArrayList<>();
        lists.forEach((path, all) -> together.add(new Edit(path, List.copyOf(all))));
        together.addAll(rest);
        return together;
    }

    /** {@return changes of a changed design told as changes of this one: of a list only what they themselves add} */
    List<Edit> ofBase(List<Edit> edits, Design changed) {
        return edits.stream().map(edit -> ofBase(edit, changed)).toList();
    }

    private Edit ofBase(Edit edit, Design changed) {
        List<Object> more = added(changed, edit);
        List<?> now = listed(base, edit.path());
        if (more.isEmpty() || now == null) {
            return edit;
        }
        List<Object> all = new ArrayList<>(now);
        all.addAll(more);
        return new Edit(edit.path(), List.copyOf(all));
    }

    /**
     * {@return changes told so that whoever carries them out one after the other has them all: a list holds what was added and changed
     * before}
     *
     * @param before the edits before them
     */
    List<Edit> after(List<Edit> before, List<Edit> edits) {
        List<Edit> all = new ArrayList<>(before);
        all.addAll(edits);
        Design then = DesignEdits.apply(base, together(all));
        return edits.stream()
                .map(edit -> added(base, edit).isEmpty() ? edit : new Edit(edit.path(), listed(then, edit.path())))
                .toList();
    }
}
