package org.standwright.check;

import java.util.Optional;

/**
 * A change that was tried: the stand was built with it and the rule asked again.
 *
 * @param words what is different: 'a second worktop layer'
 * @param after what the rule then measures
 */
public record Cure(String words, Optional<Gauge> after) {}
