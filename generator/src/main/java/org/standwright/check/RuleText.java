package org.standwright.check;

/**
 * What a rule is about, in words for the maker.
 *
 * @param name as in {@code top-sag}
 * @param question that it answers: 'Does the top sag under the machine?'
 * @param formula as plain text with the symbols of its inputs; empty where nothing is worked out
 * @param assumptions what is taken for granted; empty where nothing is
 * @param source where formula and limit come from
 */
public record RuleText(String name, String question, String formula, String assumptions, String source) {
    /** Of a rule that works nothing out. */
    public static RuleText plain(String name, String question, String source) {
        return new RuleText(name, question, "", "", source);
    }
}
