package tamabako.showing.safety;

/// Which change of luminance is one half of a flash.
///
/// @param least the least change, 0 to 1
/// @param darkBelow how dark the darker of the two states must be, 0 to 1
record Luminances(double least, double darkBelow) {

    /// WCAG 2.2: "a pair of opposing changes in relative luminance of 10% or more of the maximum
    /// relative luminance (1.0) where the relative luminance of the darker image is below 0.80".
    static final Luminances WCAG = new Luminances(0.10, 0.80);

    /// ITU-R BT.1702: a change of 20 cd/m2 or more where the darker image is below 160 cd/m2.
    ///
    /// @param peak the brightness of the screen's white in cd/m2
    static Luminances broadcast(double peak) {
        return new Luminances(20 / peak, 160 / peak);
    }

    boolean isTransition(double from, double to) {
        return Math.abs(to - from) >= least && Math.min(from, to) < darkBelow;
    }
}
