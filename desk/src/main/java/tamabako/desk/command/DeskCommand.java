package tamabako.desk.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.net.InetAddress;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.time.Clock;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import tamabako.desk.home.HomePage;
import tamabako.desk.mark.MarkPages;
import tamabako.desk.sheet.SheetPages;
import tamabako.desk.web.DeskServer;
import tamabako.desk.web.Routes;
import tamabako.records.ClassBook;
import tamabako.records.RecordsFailure;

/// Starts the desk and stays until it is told to stop (Ctrl+C, SIGTERM).
@Command(
        name = "desk",
        mixinStandardHelpOptions = true,
        description = "Starts the desk and prints its address.",
        footer = {"", "Example: tamabako desk --port 9000 --data lessons"})
public final class DeskCommand implements Callable<Integer> {

    private static final int USUAL_PORT = 8686;

    /// So many ports are tried where the usual one is taken.
    private static final int TRIES = 20;

    @Spec private CommandSpec spec;

    @Option(
            names = "--port",
            paramLabel = "PORT",
            description = "The port; without it 8686, or the next free one.")
    private Optional<Integer> port = Optional.empty();

    @Option(
            names = "--address",
            paramLabel = "ADDRESS",
            defaultValue = "127.0.0.1",
            description = "Where it listens. The usual 127.0.0.1 lets only this computer in.")
    private InetAddress address = InetAddress.getLoopbackAddress();

    @Option(
            names = "--data",
            paramLabel = "FOLDER",
            description =
                    "The folder of the class book; without it $XDG_DATA_HOME/tamabako or"
                            + " ~/.tamabako.")
    private Optional<Path> data = Optional.empty();

    @Option(names = "--demo", description = "Puts the demo class in the book if it is not there.")
    private boolean demo;
