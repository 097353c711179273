package org.standwright.export;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.OptionalDouble;
import org.standwright.check.Cure;
import org.standwright.check.Finding;
import org.standwright.check.Gauge;
import org.standwright.check.Input;
import org.standwright.check.Limit;
import org.standwright.check.RuleText;
import org.standwright.check.Weight;

/** The report's part on what the rules ask and find, and on what weighs. */
final class ReportChecks {
    private ReportChecks() {}

    static ObjectNode finding(Finding finding) {
        var node = JsonShapes.object()
                .put("severity", JsonShapes.word(finding.severity()))
                .put("rule", finding.rule())
                .put("subject", finding.subject())
                .put("message", finding.message())
                .put("source", finding.source());
        finding.gauge().ifPresent(gauge -> gauge(gauge, node));
        if (!finding.inputs().isEmpty()) {
            node.set("inputs", JsonShapes.list(finding.inputs(), ReportChecks::input));
        }
        finding.cure().ifPresent(cure -> node.set("cure", cure(cure)));
        finding.waived().ifPresent(reason -> node.put("waived", reason));
        return node;
    }

    private static void gauge(Gauge gauge, ObjectNode node) {
        node.put("quantity", JsonShapes.word(gauge.quantity())).put("figure", gauge.figure());
        node.set("limit", limit(gauge.limit()));
        if (Double.isFinite(gauge.used())) {
            node.put("ratio", gauge.used());
        }
    }

    private static ObjectNode limit(Limit limit) {
        var node = JsonShapes.object().put("side", JsonShapes.word(limit.side()));
        put("note", limit.note(), node);
        put("caution", limit.caution(), node);
        put("stop", limit.stop(), node);
        return node;
    }

    private static void put(String name, OptionalDouble value, ObjectNode node) {
        if (value.isPresent()) {
            node.put(name, value.getAsDouble());
        }
    }

    private static ObjectNode input(Input input) {
        return JsonShapes.object()
                .put("symbol", input.symbol())
                .put("what", input.what())
                .put("quantity", JsonShapes.word(input.quantity()))
                .put("value", input.value());
    }

    private static ObjectNode cure(Cure cure) {
        var node = JsonShapes.object().put("words", cure.words());
        cure.after().ifPresent(after -> node.put("figure", after.figure()));
        cure.left().ifPresent(left -> node.put("left", left));
        return node;
    }

    static ObjectNode rule(RuleText rule) {
        return JsonShapes.object()
                .put("name", rule.name())
                .put("question", rule.question())
                .put("formula", rule.formula())
                .put("assumptions", rule.assumptions())
                .put("source", rule.source());
    }

    static ObjectNode weight(Weight weight) {
        var node = JsonShapes.object()
                .put("what", weight.what())
                .put("kind", JsonShapes.word(weight.kind()))
                .put("group", weight.group())
                .put("mass", weight.mass());
        node.set("centre", JsonShapes.point(weight.centre()));
        return node;
    }
}
