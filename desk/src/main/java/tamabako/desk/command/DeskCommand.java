package tamabako.desk.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.stream.IntStream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import tamabako.desk.opening.OpenDesk;
import tamabako.desk.opening.PrivateFolder;
import tamabako.desk.web.BadEncryption;
import tamabako.desk.web.Encryption;
import tamabako.desk.web.Languages;
import tamabako.desk.web.Words;
import tamabako.records.RecordsFailure;

/// Starts the desk and stays until it is told to stop (Ctrl+C or SIGTERM).
@Command(
        name = "desk",
        mixinStandardHelpOptions = true,
        description = "Starts the desk and prints its address.",
        footer = {
            "",
            "Examples:",
            "  tamabako desk --port 9000 --data lessons",
            "  tamabako desk --database postgresql://teacher@db.example:5432/classbook"
        })
public final class DeskCommand implements Callable<Integer> {

    private static final int USUAL_PORT = 8686;

    /// So many ports are tried where the usual one is taken.
    private static final int TRIES = 20;

    @Spec private CommandSpec spec = CommandSpec.create();

    @Option(
            names = "--port",
            paramLabel = "PORT",
            description = "The port; without it 8686, or the next free one.")
    private Optional<Integer> port = Optional.empty();

    @Option(
            names = "--address",
            paramLabel = "ADDRESS",
            description =
                    "Where it listens; without it 127.0.0.1, which lets only this computer in.")
    private Optional<InetAddress> address = Optional.empty();

    @Mixin private EncryptionOptions encryption = new EncryptionOptions();

    @Mixin private BookPlace place = new BookPlace();

    @Option(
            names = "--demo",
            description =
                    "Puts the demo class in the book if it is not there; a new book has it anyway.")
    private boolean demo;

    @Option(
            names = "--no-password",
            description =
                    "Asks for no password this time; only where no other computer is let in. The way"
                            + " back in when the owner's password was forgotten.")
    private boolean noPassword;

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        PrintWriter err = spec.commandLine().getErr();
        Words words = words();
        InetAddress where = address.orElseGet(InetAddress::getLoopbackAddress);
        if (noPassword && !where.isLoopbackAddress()) {
            err.println(words.say("start.no-password", where.getHostAddress()));
            return Exit.COULD_NOT_RUN;
        }
        Optional<Integer> free = freePort(where);
        if (free.isEmpty()) {
            err.println(words.say("start.no-port", port.orElse(USUAL_PORT)));
            return Exit.COULD_NOT_RUN;
        }
        Optional<Encryption> secret;
        try {
            secret = encryption.read();
        } catch (BadEncryption bad) {
            err.println(bad.say(words));
            return Exit.COULD_NOT_RUN;
        }
        try (OpenDesk desk = open(new OpenDesk.Place(where, free.get(), secret))) {
            out.println(words.say("start.open", desk.url(), desk.database()));
            desk.setupCode().ifPresent(code -> out.println(words.say("start.setup-code", code)));
            out.flush();
            stayUntilStopped(desk);
            return Exit.DONE;
        } catch (RecordsFailure failed) {
            err.println(words.say("start.no-book", String.valueOf(failed.getMessage())));
            return Exit.COULD_NOT_RUN;
        }
    }

    private OpenDesk open(OpenDesk.Place where) {
        place.folder().ifPresent(PrivateFolder::make);
        return noPassword
                ? OpenDesk.open(place.database(), demo, where)
                : OpenDesk.guarded(place.database(), demo, where);
    }

    /// The words of the computer's own language.
    private static Words words() {
        Optional<String> language = Optional.of(Locale.getDefault().toLanguageTag());
        return Languages.of(List.of()).choose(Optional.empty(), language);
    }

    /// The machine asks a program to stop by running its shutdown hooks.
    private static void stayUntilStopped(OpenDesk desk) {
        Runtime.getRuntime().addShutdownHook(new Thread(desk::close, "stop"));
        CountDownLatch forever = new CountDownLatch(1);
        try {
            forever.await();
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
    }

    private Optional<Integer> freePort(InetAddress where) {
        IntStream ports =
                port.map(IntStream::of)
                        .orElseGet(() -> IntStream.range(USUAL_PORT, USUAL_PORT + TRIES));
        return ports.filter(one -> isFree(where, one)).boxed().findFirst();
    }

    private static boolean isFree(InetAddress where, int port) {
        if (port < 0 || port > 65_535) {
            return false;
        }
        try (ServerSocket _ = new ServerSocket(port, 1, where)) {
            return true;
        } catch (IOException taken) {
            return false;
        }
    }
}
