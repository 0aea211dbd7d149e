/// Rules that a pupil has learned wrong and follows again and again: "to add 6, take 6 and carry
/// one" instead of "take 4".
///
/// A slip comes and goes; a lasting rule fires again on the same digit, in the same move. That
/// makes it far easier to find than a kind of slip, and it must be taught anew, not practised away.
/// A [LastingRule] names the move, the digit and what is moved instead. [RuleWalk] works a column
/// as a pupil would who follows it at some of its occasions, in every way that this can happen, and
/// [RuleTally] asks which rule, followed how often, makes all answers of a pupil likeliest - the
/// right ones too, for a rule that never fires where it could is no rule.
///
/// Source of the method: Brown and Burton, "Diagnostic models for procedural bugs in basic
/// mathematical skills", Cognitive Science 2 (1978): work every problem under every bug and compare
/// the answers. Source of the caution: VanLehn, "Bugs are not enough" (1982): bugs come and go, so
/// a rule here may also be followed only at times.
@NullMarked
package tamabako.insight.rule;

import org.jspecify.annotations.NullMarked;
