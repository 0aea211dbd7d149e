package tamabako.frame.words;

import tamabako.frame.Cause;

/// Names what asked for a step.
record CauseWords(Phrases phrases) {

    /// A cause in a few words.
    String label(Cause cause) {
        Topic topic = Topic.of(cause, 0, 1, 0);
        String word = cause instanceof Cause.Setting ? topic.verb().orElseThrow() : cause.word();
        return phrases.say("label." + word, topic.values());
    }
}
