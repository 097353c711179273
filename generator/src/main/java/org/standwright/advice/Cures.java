package org.standwright.advice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.standwright.check.Cure;
import org.standwright.check.Finding;
import org.standwright.check.Gauge;
import org.standwright.check.Remedy;
import org.standwright.check.Severity;
import org.standwright.design.Design;
import org.standwright.design.ImpossibleDesignException;
import org.standwright.design.StandDesign;
import org.standwright.design.WallDesign;
import org.standwright.solid.AssemblySolids;

/**
 * Tries what rules propose against a stop or a caution: builds the changed furniture, weighs it and checks it again. A cure is
 * the first proposal after which the rule has no more to say against the same subject (or, where that is gone, against
 * anything), and after which nothing new stops it, nor anything more than before. Against a stop two proposals are
 * tried together where none does alone; where no two do, the first that leaves a caution is better than nothing. What is
 * accepted as it is needs none.
 *
 * @param <S> what the rules look at
 */
public final class Cures<S> {
    /** Changed designs that are built for one, the worst findings' first. */
    static final int MOST_BUILDS = 20;
    /** Of the proposals against one finding so many are tried together, the cheapest. */
    private static final int PAIRED = 4;
    /** Sums of doubles differ by less. */
    private static final double SAME = 1 + 1e-9;

    private final Judging<S> judging;
    private final Design before;
    private final List<Finding> findings;
    /** What was built of the changed designs; nothing for one that cannot be built. */
    private final Map<Design, Optional<S>> built = new HashMap<>();
    /** Whether something new stops them. */
    private final Map<Design, Boolean> stopped = new HashMap<>();

    private Cures(Judging<S> judging, Design before, List<Finding> findings) {
        this.judging = judging;
        this.before = before;
        this.findings = findings;
    }

    /**
     * The findings in a stand in their order, those with a cure that have one.
     *
     * @param solids of this very stand
     * @param findings what all rules find in it
     */
    public static List<Finding> of(StandDesign stand, AssemblySolids solids, List<Finding> findings) {
        return of(Judging.ofStand(solids), stand, findings);
    }

    /** The same of walls of cleats. */
    public static List<Finding> of(WallDesign wall, AssemblySolids solids, List<Finding> findings) {
        return of(Judging.ofWall(solids), wall, findings);
    }

    /**
     * The findings in their order, those with a cure that have one.
     *
     * @param before the design that they are about
     * @param findings what all rules find in it
     */
    public static <S> List<Finding> of(Judging<S> judging, Design before, List<Finding> findings) {
        return new Cures<>(judging, before, findings).all();
    }

    private List<Finding> all() {
        var cures = new HashMap<Integer, Cure>();
        IntStream.range(0, findings.size())
                .boxed()
                .filter(place -> wantsCure(findings.get(place)))
                .sorted(Comparator.comparing(findings::get, worstFirst()))
                .forEach(place -> cure(findings.get(place)).ifPresent(cure -> cures.put(place, cure)));
        return IntStream.range(0, findings.size())
                .mapToObj(place ->
                        cures.containsKey(place) ? findings.get(place).cured(cures.get(place)) : findings.get(place))
                .toList();
    }

    private static boolean wantsCure(Finding finding) {
        return isTrouble(finding) && finding.waived().isEmpty();
    }

    private static boolean isTrouble(Finding finding) {
        return finding.severity().compareTo(Severity.CAUTION) <= 0;
    }

    private static Comparator<Finding> worstFirst() {
        return Comparator.comparing(Finding::severity)
                .thenComparing(finding -> finding.gauge().map(Gauge::used).orElse(0.0), Comparator.reverseOrder());
    }

    private Optional<Cure> cure(Finding finding) {
        var better = new ArrayList<Cure>();
        for (var remedy : tries(finding)) {
            var cure =
                    remedy.change().apply(before).flatMap(this::built).flatMap(after -> cure(finding, remedy, after));
            if (cure.isPresent() && cure.get().left().isEmpty()) {
                return cure;
            }
            cure.ifPresent(better::add);
        }
        return better.stream().findFirst();
    }

    private static List<Remedy> tries(Finding finding) {
        var alone = finding.remedies();
        var tries = new ArrayList<>(alone);
        if (finding.severity() == Severity.STOP) {
            int most = Math.min(PAIRED, alone.size());
            for (int first = 0; first < most; first++) {
                for (int second = first + 1; second < most; second++) {
                    tries.add(alone.get(first).and(alone.get(second)));
                }
            }
        }
        return tries;
    }

    /** What a changed design becomes, or nothing where it cannot be built or too many were built already. */
    private Optional<S> built(Design design) {
        if (!built.containsKey(design) && built.size() < MOST_BUILDS) {
            built.put(design, build(design));
        }
        return built.getOrDefault(design, Optional.empty());
    }

    private Optional<S> build(Design design) {
        try {
            return judging.build().apply(design);
        } catch (ImpossibleDesignException refusal) {
            return Optional.empty();
        }
    }

    private Optional<Cure> cure(Finding finding, Remedy remedy, S after) {
        var ofRule = judging.rules().stream()
                .filter(rule -> rule.text().name().equals(finding.rule()))
                .flatMap(rule -> judging.findings(rule, after))
                .toList();
        var same = ofRule.stream()
                .filter(other -> other.subject().equals(finding.subject()))
                .toList();
        var about = same.isEmpty() ? ofRule : same;
        var left = about.stream().filter(Cures::isTrouble).min(worstFirst());
        boolean helps = left.isEmpty()
                || finding.severity() == Severity.STOP && left.get().severity() == Severity.CAUTION;
        return helps && !isStopped(after)
                ? Optional.of(new Cure(
                        remedy.words(), judging.design().apply(after), worst(about), left.map(Finding::message)))
                : Optional.empty();
    }

    private static Optional<Gauge> worst(List<Finding> findings) {
        return findings.stream().flatMap(finding -> finding.gauge().stream()).max(Comparator.comparing(Gauge::used));
    }

    /** Whether something stops what was changed that did not stop it before, or less. */
    private boolean isStopped(S after) {
        return stopped.computeIfAbsent(judging.design().apply(after), design -> {
            var known = stops(findings.stream());
            return stops(judging.rules().stream().flatMap(rule -> judging.findings(rule, after))).entrySet().stream()
                    .anyMatch(stop -> stop.getValue() > SAME * known.getOrDefault(stop.getKey(), 0.0));
        });
    }

    /** What stops it, with the share of its limit that is used. */
    private static Map<String, Double> stops(Stream<Finding> findings) {
        return findings.filter(Finding::isStop)
                .collect(Collectors.toMap(
                        finding -> finding.rule() + " " + finding.subject(),
                        finding -> finding.gauge().map(Gauge::used).orElse(1.0),
                        Math::max,
                        TreeMap::new));
    }
}
