package org.standwright.check.wall.statics;

/**
 * The most that may hang on a strip for its screws, its centre and its drop as they are. That it may ride out sooner or later
 * is another question, and does not depend on its weight.
 *
 * <p>Pull and shear grow in step with the weight, and all shares with them, also the combined one: the limit is the weight
 * over the largest share.
 *
 * @param weight in all, with the holder, N; 0 where the screw holds nothing
 * @param weakest what gives at that weight
 */
public record LoadLimit(double weight, WeakLink weakest) {
    public static LoadLimit of(StripPull strip, WallScrew screw) {
        var use = screw.use(strip.perScrew());
        return new LoadLimit(strip.hanging().weight() / use.most(), use.weakest());
    }
}
