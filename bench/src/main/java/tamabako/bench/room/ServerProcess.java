package tamabako.bench.room;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;

/// A [RoomServer] in a process of its own.
final class ServerProcess implements AutoCloseable {

    private static final String PLAIN = "-plain";

    private final Process process;
    private final Writer commands;
    private final BlockingQueue<String> lines = new LinkedBlockingQueue<>();
    private final List<Long> events = new ArrayList<>();
    final int port;
    final String code;
    final String room;

    ServerProcess(String name, Path folder) throws IOException {
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(options(name));
        command.addAll(
                List.of(
                        "-cp",
                        System.getProperty("java.class.path"),
                        RoomServer.class.getName(),
                        name.replace(PLAIN, ""),
                        folder.toString()));
        process =
                new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.INHERIT).start();
        commands = process.outputWriter(StandardCharsets.UTF_8);
        Thread.ofPlatform().daemon().start(this::read);
        String[] ready = await("READY").split(" ", -1);
        port = Integer.parseInt(ready[1]);
        code = ready[2];
        room = ready[3];
    }

    /// The options of the virtual machine: those with which the desk is started, for all servers;
    /// or, where the name ends in `-plain`, none that spares memory.
    private static List<String> options(String name) {
        List<String> options =
                new ArrayList<>(
                        List.of(
                                "-XX:+UseSerialGC",
                                "-Xmx1g",
                                "--sun-misc-unsafe-memory-access=allow",
                                "--enable-native-access=ALL-UNNAMED"));
        if (!name.endsWith(PLAIN)) {
            options.addAll(
                    List.of(
                            "-XX:+UseCompactObjectHeaders",
                            "-Xms16m",
                            "-XX:NewRatio=4",
                            "-XX:MinHeapFreeRatio=10",
                            "-XX:MaxHeapFreeRatio=20",
                            "-XX:-ShrinkHeapInSteps",
                            "-XX:TrimNativeHeapInterval=5000"));
        }
        String more = System.getProperty("options", "");
        options.addAll(more.isEmpty() ? List.of() : List.of(more.split(" ", -1)));
        return options;
    }

    private void read() {
        try (BufferedReader out =
                new BufferedReader(
                        new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8))) {
            for (String line = out.readLine(); line != null; line = out.readLine()) {
                if (line.startsWith("EVENT ")) {
                    synchronized (events) {
                        events.add(Long.parseLong(line.substring(6)));
                    }
                } else {
                    lines.add(line);
                }
            }
        } catch (IOException killed) {
            // Then nobody says anything more.
        }
    }

    /// When each event for all seats was kept, by the clock that all processes of a machine share,
    /// in nanoseconds.
    List<Long> events() {
        synchronized (events) {
            return List.copyOf(events);
        }
    }

    void tell(String command) {
        try {
            commands.write(command + "\n");
            commands.flush();
        } catch (IOException gone) {
            throw new UncheckedIOException(gone);
        }
    }

    /// The next line of that sort.
    String await(String word) {
        try {
            String line = lines.poll(120, TimeUnit.SECONDS);
            while (line != null && !line.startsWith(word)) {
                line = lines.poll(120, TimeUnit.SECONDS);
            }
            if (line == null) {
                throw new IllegalStateException("The server never said " + word + ".");
            }
            return line;
        } catch (InterruptedException stopped) {
            throw new IllegalStateException(stopped);
        }
    }

    /// Kills it as `kill -9` does.
    void kill() throws InterruptedException {
        process.destroyForcibly();
        process.waitFor();
    }

    @Override
    public void close() {
        process.destroy();
        try {
            if (!process.waitFor(10, TimeUnit.SECONDS)) {
                process.destroyForcibly().waitFor();
            }
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
    }
}
