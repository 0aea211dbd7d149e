package tamabako.insight.estimate;

/// What a quantity most likely is, and how sure that is.
///
/// @param value in the quantity's own unit
/// @param standardError in the same unit, from the curvature of the likelihood at its top; not
///   below zero
public record Estimate(double value, double standardError) {}
