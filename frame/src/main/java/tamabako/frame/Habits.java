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

    public Habits with(CarryOrder changed) {
        return new Habits(changed, fingering, trialRule, squareRootWay);
    }

    public Habits with(Fingering changed) {
        return new Habits(carryOrder, changed, trialRule, squareRootWay);
    }

    public Habits with(TrialRule changed) {
        return new Habits(carryOrder, fingering, changed, squareRootWay);
    }

    public Habits with(SquareRootWay changed) {
        return new Habits(carryOrder, fingering, trialRule, changed);
    }
}
