package org.example.kettlehill;

import java.util.List;
import org.leat.check.Rule;
import org.leat.check.RulePack;

/** The Java rules of Kettle Hill Water Power, an installer who does not exist. */
public final class KettleHillPack implements RulePack {

    @Override
    public String name() {
        return "kettle-hill";
    }

    @Override
    public List<Rule> rules() {
        return List.of(FullByEvening.RULE, SpareNozzle.RULE);
    }
}
