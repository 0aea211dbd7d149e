package tamabako.voice.sound;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/// An offline recogniser that listens to single numbers: the Debian packages pocketsphinx and
/// pocketsphinx-en-us, with a grammar of number words. Japanese is heard through English sounds, so
/// what it hears is less than a person would.
final class Recogniser {

    private static final Path MODEL = Path.of("/usr/share/pocketsphinx/model/en-us");
    private static final Path PROGRAM = Path.of("/usr/bin/pocketsphinx_batch");
    private static final Pattern LINE = Pattern.compile("(.*?)\\s*\\((\\d+) .*\\)");

    private final Path folder;
    private final String language;

    Recogniser(Path folder, String language) {
        this.folder = folder;
        this.language = language;
    }

    static boolean isInstalled() {
        return Files.isExecutable(PROGRAM) && Files.isDirectory(MODEL);
    }

    /// What it hears in each of the sounds, as words.
    List<String> hear(List<float[]> sounds) throws IOException, InterruptedException {
        Path grammar = Path.of("src/test/recogniser/" + language + ".jsgf");
        Path words = dictionary();
        StringBuilder list = new StringBuilder();
        for (int i = 0; i < sounds.size(); i++) {
            Files.write(folder.resolve(i + ".wav"), Wave.of(sounds.get(i)));
            list.append(i).append('\n');
        }
        Files.writeString(folder.resolve("list"), list);
        Process process =
                new ProcessBuilder(
                                PROGRAM.toString(),
                                "-hmm",
                                MODEL.resolve("en-us").toString(),
                                "-jsgf",
                                grammar.toAbsolutePath().toString(),
                                "-dict",
                                words.toAbsolutePath().toString(),
                                "-ctl",
                                folder.resolve("list").toString(),
                                "-cepdir",
                                folder.toString(),
                                "-cepext",
                                ".wav",
                                "-adcin",
                                "yes",
                                "-adchdr",
                                "44",
                                "-cmn",
                                "batch",
                                "-remove_silence",
                                "no",
                                "-remove_noise",
                                "no",
                                "-beam",
                                "1e-80",
                                "-wbeam",
                                "1e-60",
                                "-pbeam",
                                "1e-80",
                                "-hyp",
                                folder.resolve("heard").toString())
                        .redirectErrorStream(true)
                        .redirectOutput(folder.resolve("log").toFile())
                        .start();
        if (process.waitFor() != 0) {
            throw new IOException(Files.readString(folder.resolve("log")));
        }
        List<String> heard = new ArrayList<>();
        for (String line : Files.readAllLines(folder.resolve("heard"))) {
            Matcher read = LINE.matcher(line);
            heard.add(read.matches() ? read.group(1) : "");
        }
        return heard;
    }

    /// The words of the grammar with their sounds: for English those of the model's own dictionary.
    private Path dictionary() throws IOException {
        Path own = Path.of("src/test/recogniser/" + language + ".dict");
        if (Files.exists(own)) {
            return own;
        }
        String grammar = Files.readString(Path.of("src/test/recogniser/" + language + ".jsgf"));
        List<String> used = new ArrayList<>();
        try (Stream<String> lines =
                Files.lines(MODEL.resolve("cmudict-en-us.dict"), StandardCharsets.UTF_8)) {
            Set<String> words = new HashSet<>(List.of(grammar.split("[^a-z]+", -1)));
            lines.filter(line -> words.contains(line.split("[ (]", 2)[0])).forEach(used::add);
        }
        used.add("quadrillion K W AA D R IH L Y AH N");
        Path dictionary = folder.resolve("words.dict");
        Files.write(dictionary, used);
        return dictionary;
    }
}
