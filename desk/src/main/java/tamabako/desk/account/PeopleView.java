package tamabako.desk.account;

import java.util.List;
import tamabako.records.Teacher;

/// What the page of accounts shows.
///
/// @param owned whether the desk has an owner
/// @param people everyone, by name
/// @param name the name typed so far for someone new
/// @param fault what is wrong with it, empty where nothing is
public record PeopleView(boolean owned, List<Person> people, String name, String fault) {

    public PeopleView {
        people = List.copyOf(people);
    }

    /// Someone who teaches or helps.
    ///
    /// @param browsers at how many browsers they are signed in
    public record Person(String id, String name, Teacher.Role role, State state, int browsers) {

        /// What they can be made instead, as the form says it.
        public String otherRole() {
            return role == Teacher.Role.TEACHER ? "assistant" : "teacher";
        }

        /// Whether the desk is theirs.
        public boolean owner() {
            return role == Teacher.Role.OWNER;
        }

        /// Names the text that says what they do.
        public String roleKey() {
            return switch (role) {
                case OWNER -> "role.owner";
                case TEACHER -> "role.teacher";
                case ASSISTANT -> "role.assistant";
            };
        }

        /// Names the text that says how their account is.
        public String stateKey() {
            return switch (state) {
                case NONE -> "people.none";
                case WAITS -> "people.waits";
                case TOO_LATE -> "people.too-late";
                case OPEN -> "people.open";
                case SHUT -> "people.shut";
            };
        }

        /// Whether their account is shut.
        public boolean shut() {
            return state == State.SHUT;
        }

        /// Whether they have an account.
        public boolean known() {
            return state != State.NONE;
        }
    }

    /// How an account is.
    public enum State {

        /// There is none.
        NONE,

        /// It waits for its first password.
        WAITS,

        /// It waited too long.
        TOO_LATE,

        /// It has a password.
        OPEN,

        /// It is shut.
        SHUT
    }
}
