package tamabako.desk.room.live;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import tamabako.desk.web.Outlet;
import tamabako.desk.web.Telling;

class BroadcastTest {

    private final Broadcast room = new Broadcast();

    /// A connection that takes something only when the test lets it.
    private static final class Ear implements Outlet {

        private final List<String> heard = new ArrayList<>();
        private @Nullable Telling telling;
        private int woken;
        private boolean isCut;

        @Override
        public void tell(Telling told) {
            telling = told;
        }

        @Override
        public void wake() {
            woken++;
        }

        @Override
        public void cut() {
            isCut = true;
        }

        /// Takes all there is; whether it is over then.
        private boolean take() {
            if (telling == null) {
                throw new AssertionError("Nothing is told here yet.");
            }
            boolean isOver = telling.isOver();
            Optional<byte[]> next = telling.next();
            while (next.isPresent()) {
                heard.add(new String(next.get(), StandardCharsets.UTF_8));
                next = telling.next();
            }
            return isOver;
        }
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    private static String text(byte[] bytes) {
        return new String(bytes, StandardCharsets.UTF_8);
    }

    private Broadcast.Listener join(Ear ear) {
        Broadcast.Listener listener = room.join(ear, _ -> {});
        listener.begin(bytes("greeting"));
        return listener;
    }

    @Test
    void everybodyHearsEverythingInOrderAfterTheGreeting() {
        room.say(bytes("before"));
        Ear quick = new Ear();
        Ear slow = new Ear();
        join(quick);
        join(slow);
        room.say(bytes("one"));
        quick.take();
        room.say(bytes("two"));
        quick.take();
        slow.take();
        assertThat(quick.heard).containsExactly("greeting", "one", "two");
        assertThat(slow.heard).containsExactly("greeting", "one", "two");
        assertThat(quick.woken).isEqualTo(2);
    }

    @Test
    void whatIsSaidBetweenJoiningAndTheGreetingIsNotLost() {
        Ear ear = new Ear();
        Broadcast.Listener listener = room.join(ear, _ -> {});
        room.say(bytes("meanwhile"));
        listener.begin(bytes("greeting"));
        ear.take();
        assertThat(ear.heard).containsExactly("greeting", "meanwhile");
    }

    @Test
    void onlyTheOneThatIsPokedLooksAgain() {
        Ear poked = new Ear();
        Ear other = new Ear();
        Broadcast.Listener listener = join(poked);
        join(other);
        listener.poke();
        poked.take();
        other.take();
        assertThat(poked.heard).containsExactly("greeting", text(SseText.LOOK));
        assertThat(other.heard).containsExactly("greeting");
    }

    @Test
    void whoIsReplacedHearsSoAndItIsOver() {
        Ear ear = new Ear();
        Broadcast.Listener listener = join(ear);
        assertThat(ear.take()).isFalse();
        listener.replace();
        assertThat(ear.take()).isTrue();
        assertThat(ear.heard).containsExactly("greeting", text(SseText.REPLACED));
    }

    @Test
    void whatIsSaidLastIsHeardBeforeItIsOver() {
        Ear ear = new Ear();
        join(ear);
        room.say(bytes("last"));
        room.close();
        assertThat(ear.take()).isTrue();
        assertThat(ear.heard).containsExactly("greeting", "last");
    }

    @Test
    void whoIsAThousandMessagesBehindIsLetGo() {
        Ear stuck = new Ear();
        Ear quick = new Ear();
        join(stuck);
        join(quick);
        for (int i = 0; i < 1_000; i++) {
            room.say(bytes("message"));
            quick.take();
        }
        assertThat(stuck.isCut).isFalse();
        room.say(bytes("one too many"));
        assertThat(stuck.isCut).isTrue();
        assertThat(quick.isCut).isFalse();
    }

    @Test
    void whoWentIsCountedNoMoreAndSaysSo() {
        List<Broadcast.Listener> left = new ArrayList<>();
        Ear ear = new Ear();
        Broadcast.Listener listener = room.join(ear, left::add);
        listener.begin(bytes("greeting"));
        assertThat(room.count()).isEqualTo(1);
        listener.gone();
        room.say(bytes("to nobody"));
        assertThat(room.count()).isZero();
        assertThat(left).containsExactly(listener);
        assertThat(ear.woken).isZero();
    }
}
