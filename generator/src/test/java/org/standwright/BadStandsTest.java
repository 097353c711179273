package org.standwright;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.standwright.advice.Cures;
import org.standwright.check.Finding;
import org.standwright.check.LoadedStand;
import org.standwright.check.Remedy;
import org.standwright.check.Severity;
import org.standwright.check.Stands;
import org.standwright.check.rules.Checks;
import org.standwright.design.StandDesign;
import org.standwright.design.stand.StandBuilder;
import org.standwright.solid.AssemblySolids;

/** Preset stands spoilt in one way each, and the one rule that has to notice; no other may stop them. */
class BadStandsTest {
    static Stream<Arguments> spoilt() {
        return Stream.of(
                bad("tip-open", Severity.STOP, "planer-stand", "{ '/steady': null }"),
                bad("tip-push", Severity.STOP, "grinder-stand", "{ '/steady': null }"),
                bad("tip-feed", Severity.STOP, "planer-stand", """
                        { '/machine': { 'preset': 'thickness-planer',
                                        'workingForce': { 'force': '400 N', 'height': '110 mm' } } }"""),
                bad("tip-slope", Severity.CAUTION, "table-saw-stand", "{ '/site/slope': 15 }"),
                bad("tip-threshold", Severity.STOP, "planer-stand", "{ '/site/threshold': '55 mm' }"),
                bad(
                        "foot-load",
                        Severity.STOP,
                        "planer-stand",
                        "{ '/support/caster': { 'preset': 'caster-100', 'rating': '30 kg' } }"),
                bad(
                        "rolling-stand",
                        Severity.CAUTION,
                        "table-saw-stand",
                        "{ '/support/caster': 'caster-4-inch-free' }"),
                bad("level-range", Severity.CAUTION, "router-table-stand", "{ '/site/fall': '20 mm' }"),
                bad("machine-centre", Severity.CAUTION, "sander-stand", """
                        { '/machine': { 'name': 'unknown sander', 'base': { 'width': '16 in', 'depth': '12 in' },
                                        'envelope': { 'width': '20 in', 'depth': '16 in', 'height': '14 in' },
                                        'mass': '40 lb', 'reference': { 'kind': 'table', 'height': '8 in' },
                                        'feet': 0, 'operator': 'front', 'feed': 'none' } }"""),
                bad("top-sag", Severity.STOP, "planer-stand", """
                        { '/worktop/layers': 1, '/support/caster': 'caster-125', '/loads/drawers': 200,
                          '/machine': { 'preset': 'thickness-planer', 'mass': '130 kg' },
                          '/bays': [{ 'contents': [{ 'kind': 'equal-drawers', 'count': 3 }] }] }"""),
                bad("shelf-sag", Severity.CAUTION, "planer-stand", """
                        { '/loads/shelves': 1200, '/loads/drawers': 900, '/support/caster': 'caster-125', '/bays': [{ 'contents': [
                            { 'kind': 'open', 'shelves': { 'kind': 'adjustable', 'count': 1 } }] }] }"""),
                bad(
                        "drawer-bottom",
                        Severity.NOTE,
                        "planer-stand",
                        "{ '/drawers/bottom': { 'preset': 'birch-6.5', 'thickness': '3.2 mm' } }"),
                bad("bottom-sag", Severity.CAUTION, "table-saw-stand", "{ '/carcass/joint': { 'kind': 'screws' } }"),
                bad("racking", Severity.CAUTION, "planer-stand", """
                        { '/machine': { 'preset': 'thickness-planer',
                                        'workingForce': { 'force': '1900 N', 'height': '110 mm' } },
                          '/steady/anchor': 'floor' }"""),
                bad(
                        "slide-load",
                        Severity.STOP,
                        "planer-stand",
                        "{ '/drawers/hang/slide': { 'preset': 'slide-45-full', 'rating': '8 kg' } }"),
                bad("runner-screws", Severity.STOP, "scroll-saw-stand", """
                        { '/loads/drawers': 3500, '/drawers/bottom': 'birch-9',
                          '/support/leveler': { 'preset': 'leveler-m10', 'rating': '250 kg' } }"""),
                bad("large-parts", Severity.STOP, "planer-stand", """
                        { '/saw': { 'kerf': '3.2 mm', 'trim': '5 mm', 'longestRip': '700 mm' } }"""),
                bad(
                        "doorway",
                        Severity.CAUTION,
                        "planer-stand",
                        "{ '/site/doorway': { 'width': '400 mm', 'height': '1900 mm' } }"),
                bad("neighbour-level", Severity.CAUTION, "table-saw-stand", "{ '/workingHeight/below': '3/8 in' }"),
                bad("board-thickness", Severity.CAUTION, "planer-stand", """
                        { '/stock/sheets': [{ 'sheet': 'birch-18', 'thickness': '17.45 mm' }] }"""));
    }

    private static Arguments bad(String rule, Severity severity, String preset, String changes) {
        return Arguments.of(rule, severity, preset, changes.replace('\'', '"'));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("spoilt")
    void isNoticedByItsRuleAndStoppedByNoOther(String rule, Severity severity, String preset, String changes) {
        var findings = findings(ChangedDesign.of(preset).with(changes).design());

        assertThat(findings)
                .filteredOn(finding -> finding.rule().equals(rule))
                .extracting(Finding::severity)
                .contains(severity);
        assertThat(findings)
                .filteredOn(Finding::isStop)
                .extracting(Finding::rule)
                .allMatch(rule::equals);
    }

    /** What is wrong with a shipped stand is no more than its maker would say himself. */
    @ParameterizedTest
    @MethodSource("org.standwright.Presets#stands")
    void noShippedStandIsStopped(StandDesign design) {
        assertThat(findings(design)).filteredOn(Finding::isStop).isEmpty();
    }

    /** Each cure that is printed, built again and asked again: nothing of its rule and subject is left to watch out for. */
    @Test
    void whatIsPrintedAsACureCures() {
        var words = new TreeMap<String, List<String>>();
        spoilt().forEach(row -> {
            var design = ChangedDesign.of((String) row.get()[2])
                    .with((String) row.get()[3])
                    .design();
            for (var finding : cured(design)) {
                if (finding.cure().isPresent()) {
                    var cure = finding.cure().get();
                    var after = findings(Stands.changed(design, remedy(finding, cure.words())));
                    var lightest = cure.left().isPresent() ? Severity.STOP : Severity.CAUTION;
                    assertThat(after)
                            .filteredOn(other -> other.rule().equals(finding.rule())
                                    && other.subject().equals(finding.subject()))
                            .noneMatch(other -> other.severity().compareTo(lightest) <= 0);
                    words.computeIfAbsent(finding.rule(), rule -> new ArrayList<>())
                            .add(cure.words());
                }
            }
        });

        assertThat(words).containsKeys("tip-open", "tip-push", "tip-feed", "top-sag", "bottom-sag");
    }

    /** The one that is called so, or the two together. */
    private static Remedy remedy(Finding finding, String words) {
        var alone = finding.remedies();
        return Stream.concat(
                        alone.stream(),
                        alone.stream().flatMap(first -> alone.stream().map(first::and)))
                .filter(remedy -> remedy.words().equals(words))
                .findFirst()
                .orElseThrow();
    }

    private static List<Finding> findings(StandDesign design) {
        return Checks.of(loaded(design));
    }

    private static List<Finding> cured(StandDesign design) {
        var stand = StandBuilder.build(design);
        var solids = AssemblySolids.of(stand.assembly());
        var loaded = LoadedStand.of(stand, solids);
        return Cures.of(loaded.design(), solids, Checks.of(loaded));
    }

    private static LoadedStand loaded(StandDesign design) {
        var stand = StandBuilder.build(design);
        return LoadedStand.of(stand, AssemblySolids.of(stand.assembly()));
    }
}
