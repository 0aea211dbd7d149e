package tamabako.insight.plan;

/// How much it matters that slips become fewer in a section.
///
/// @param section the name that the section goes by within its grade
/// @param load what one of its problems holds
/// @param weight how much the goal gains for each part of the section's slips that is gone, 0 or
///   more
public record Need(String section, Load load, double weight) {

    public Need {
        if (!(weight >= 0)) {
            throw new IllegalArgumentException("A section matters by 0 or more, not " + weight);
        }
    }
}
