package tamabako.showing.safety;

/// A picture and when it came up.
///
/// @param at in milliseconds from any start; it stays until the next one comes up
public record Shown(double at, Picture picture) {}
