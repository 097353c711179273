package org.standwright.check.rules;

import java.util.List;
import org.standwright.check.Rule;
import org.standwright.check.RuleText;
import org.standwright.design.built.CleatWall;
import org.standwright.design.built.Furniture;
import org.standwright.design.built.FurnitureVisitor;
import org.standwright.design.built.Stand;

/** The rules that are asked about each kind of furniture. */
public final class RulesOf implements FurnitureVisitor<List<RuleText>> {
    private RulesOf() {}

    /** What they are about, in the order in which a maker reads them. */
    public static List<RuleText> of(Furniture furniture) {
        return furniture.accept(new RulesOf());
    }

    @Override
    public List<RuleText> stand(Stand stand) {
        return texts(Checks.STAND);
    }

    @Override
    public List<RuleText> wall(CleatWall wall) {
        return texts(Checks.WALL);
    }

    private static <S> List<RuleText> texts(List<Rule<S>> rules) {
        return rules.stream().map(Rule::text).toList();
    }
}
