package org.example.kettlehill;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.leat.check.Rule;
import org.leat.check.RulePack;

/** The Java rules of Kettle Hill Water Power, an installer who does not exist. */
public final class KettleHillPack implements RulePack {

    private static final List<Rule> RULES = List.of(new FullByEvening(), new SpareNozzle());

    @Override
    public String name() {
        return "kettle-hill";
    }

    @Override
    public List<Rule> rules() {
        return RULES;
    }

    @Override
    public Map<String, String> texts() {
        Map<String, String> texts = new TreeMap<>(FullByEvening.TEXTS);
        texts.putAll(SpareNozzle.TEXTS);
        return texts;
    }
}
