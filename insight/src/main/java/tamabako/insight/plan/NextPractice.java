package tamabako.insight.plan;

import java.util.List;
import tamabako.problems.Problem;

/// What a pupil is to practise next.
///
/// @param items the problems, in the order they are to be worked, numbered from 1
/// @param reasons why, one for each focus in a section, that with most problems first
/// @param reviews in how many days to practise again, at equal gaps, up to the exam; empty where
///   its day is not known
public record NextPractice(List<Item> items, List<Reason> reasons, List<Integer> reviews) {

    public NextPractice {
        items = List.copyOf(items);
        reasons = List.copyOf(reasons);
        reviews = List.copyOf(reviews);
    }

    /// A problem, what it is practised for, and the name of the section that it serves.
    public record Item(Problem problem, Focus focus, String section) {}

    /// Why a focus was chosen.
    ///
    /// @param problems how many problems have it
    /// @param why the ground
    /// @param section the name of the section that it serves, within the grade
    /// @param share which part of the slips to be expected there it stands for, 0 to 1; 0 for work
    ///   as in the exam
    /// @param right the chance that such a problem goes right, 0 to 1
    public record Reason(
            Focus focus, int problems, Why why, String section, double share, double right) {}

    /// Grounds to practise something.
    public enum Why {
        /// Too little is known of the section yet.
        TO_FIND_OUT,
        /// Some of every plan is as in the exam.
        AS_IN_EXAM,
        /// Slips in it cost most, as far as is known.
        COSTS_MOST
    }

    /// The problems alone.
    public List<Problem> problems() {
        return items.stream().map(Item::problem).toList();
    }
}
