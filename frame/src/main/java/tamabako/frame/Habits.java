package tamabako.frame;

/// What teachers do differently. [#COMMON] is the published default in every point.
public record Habits(
        CarryOrder carryOrder,
        Fingering fingering,
        TrialRule trialRule,
        SquareRootWay squareRootWay) {

    /// Remove then carry; two fingers; trial by the first digit; half-nine-nine.
    public static final Habits COMMON =
            new Habits(
                    CarryOrder.REMOVE_THEN_CARRY,
                    Fingering.TWO_FINGERS,
                    TrialRule.FIRST_DIGIT,
                    SquareRootWay.HALF_NINE_NINE);

    /// These habits with another carry order.
    public Habits with(CarryOrder changed) {
        return new Habits(changed, fingering, trialRule, squareRootWay);
    }

    /// These habits with another fingering.
    public Habits with(Fingering changed) {
        return new Habits(carryOrder, changed, trialRule, squareRootWay);
    }

    /// These habits with another trial rule.
    public Habits with(TrialRule changed) {
        return new Habits(carryOrder, fingering, changed, squareRootWay);
    }

    /// These habits with another way to square roots.
    public Habits with(SquareRootWay changed) {
        return new Habits(carryOrder, fingering, trialRule, changed);
    }
}
