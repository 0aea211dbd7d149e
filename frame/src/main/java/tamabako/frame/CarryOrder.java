package tamabako.frame;

/// Which comes first when an addition passes ten. In subtraction all sources borrow first.
public enum CarryOrder {
    /// Take off the complement, then carry. Source: K. Tochio, Computation on the Soroban (1912);
    /// Heffelfinger and Flom, Abacus: Mystery of the Bead.
    REMOVE_THEN_CARRY,
    /// Carry, then take off the complement, as some present courses teach.
    CARRY_THEN_REMOVE
}
