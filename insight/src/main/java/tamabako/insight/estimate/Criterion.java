package tamabako.insight.estimate;

/// What the spreads of a model of times are chosen by.
public enum Criterion {
    /// The likelihood of the times: good for comparing models; spreads come out a little small.
    LIKELIHOOD,
    /// The likelihood of what fixed effects leave: good for the spreads themselves.
    RESTRICTED
}
