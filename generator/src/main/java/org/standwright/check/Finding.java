package org.standwright.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.standwright.unit.Units;

/**
 * Something that a rule has to say about a design.
 *
 * @param subject the part or place it is about
 * @param message what was found, without limit and cure
 * @param gauge the figure beside its limits, of a rule that measures
 * @param hint what helps in general: the end of the message, left out where there is a cure
 * @param inputs numbers put into the rule's formula
 * @param proposed changes that may answer it, worked out when they are asked for
 * @param cure the first of them that did
 * @param waived why it is accepted as it is
 */
public record Finding(
        Severity severity,
        RuleText text,
        String subject,
        String message,
        Optional<String> hint,
        Optional<Gauge> gauge,
        List<Input> inputs,
        Supplier<List<Remedy>> proposed,
        Optional<Cure> cure,
        Optional<String> waived) {
    public Finding {
        inputs = List.copyOf(inputs);
    }

    /** Of a rule that measures; it weighs what its gauge says. */
    public static Finding judged(RuleText text, String subject, Gauge gauge, String message) {
        return of(gauge.severity(), text, subject, message, Optional.of(gauge));
    }

    public static Finding note(RuleText text, String subject, String message) {
        return of(Severity.NOTE, text, subject, message, Optional.empty());
    }

    public static Finding caution(RuleText text, String subject, String message) {
        return of(Severity.CAUTION, text, subject, message, Optional.empty());
    }

    public static Finding stop(RuleText text, String subject, String message) {
        return of(Severity.STOP, text, subject, message, Optional.empty());
    }

    private static Finding of(Severity severity, RuleText text, String subject, String message, Optional<Gauge> gauge) {
        return new Finding(
                severity,
                text,
                subject,
                message,
                Optional.empty(),
                gauge,
                List.of(),
                List::of,
                Optional.empty(),
                Optional.empty());
    }

    /** Name of its rule. */
    public String rule() {
        return text.name();
    }

    /** Where the limit comes from. */
    public String source() {
        return text.source();
    }

    /** The same with numbers that were put into the formula. */
    public Finding with(Input... more) {
        var all = new ArrayList<>(inputs);
        all.addAll(List.of(more));
        return new Finding(severity, text, subject, message, hint, gauge, all, proposed, cure, waived);
    }

    /** The same with changes that may answer it, the cheapest first. */
    public Finding remedies(List<Remedy> some) {
        return remedies(() -> some);
    }

    /** The same with changes that may answer it, the cheapest first, which take some working out. */
    public Finding remedies(Supplier<List<Remedy>> some) {
        return new Finding(severity, text, subject, message, hint, gauge, inputs, some, cure, waived);
    }

    /** Changes that may answer it, the cheapest first, not tried yet. */
    public List<Remedy> remedies() {
        return proposed.get();
    }

    /** The same with what helps in general, for as long as there is no cure: a sentence. */
    public Finding hinted(String words) {
        return new Finding(
                severity,
                text,
                subject,
                message + " " + words,
                Optional.of(words),
                gauge,
                inputs,
                proposed,
                cure,
                waived);
    }

    /** The same with a change that answers it. */
    public Finding cured(Cure found) {
        var plain = hint.map(words -> message.substring(0, message.length() - words.length() - 1))
                .orElse(message);
        return new Finding(
                severity, text, subject, plain, Optional.empty(), gauge, inputs, proposed, Optional.of(found), waived);
    }

    /** The same where only a share of the limits may be used; what measures nothing stays as it is. */
    public Finding tightened(double share) {
        return gauge.map(now -> now.tightened(share))
                .map(tight -> new Finding(
                        tight.severity(),
                        text,
                        subject,
                        message,
                        hint,
                        Optional.of(tight),
                        inputs,
                        proposed,
                        cure,
                        waived))
                .orElse(this);
    }

    /** The same, accepted for a reason. */
    public Finding waivedFor(String reason) {
        return new Finding(severity, text, subject, message, hint, gauge, inputs, proposed, cure, Optional.of(reason));
    }

    /** Whether it keeps the design from being built: a stop that nobody accepted. */
    public boolean isStop() {
        return severity == Severity.STOP && waived.isEmpty();
    }

    /** Whether somebody has to read it. */
    public boolean isWorthSaying() {
        return severity != Severity.FINE;
    }

    /** Message, limit, cure and waiver in sentences. */
    public String sentences(Units units) {
        var words = new StringBuilder(message);
        if (isWorthSaying()) {
            gauge.ifPresent(measured ->
                    words.append(" Limit: ").append(measured.limitWords(units)).append('.'));
        }
        cure.ifPresent(found -> words.append(' ').append(found.sentence(units)));
        waived.ifPresent(reason -> words.append(" Accepted: ").append(reason));
        return words.toString();
    }
}
