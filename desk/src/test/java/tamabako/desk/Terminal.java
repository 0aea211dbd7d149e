package tamabako.desk;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.List;

/// A terminal that commands are run in, and what the last of them wrote there.
public final class Terminal {

    private static final ObjectMapper JSON = new ObjectMapper();

    private StringWriter out = new StringWriter();
    private StringWriter err = new StringWriter();

    /// Runs a command.
    ///
    /// @return what it exits with
    public int run(String... arguments) {
        out = new StringWriter();
        err = new StringWriter();
        return Tamabako.commandLine()
                .setOut(new PrintWriter(out, true))
                .setErr(new PrintWriter(err, true))
                .execute(arguments);
    }

    /// The same with the options after the other arguments.
    public int run(List<String> arguments, String... options) {
        List<String> all = new ArrayList<>(arguments);
        all.addAll(List.of(options));
        return run(all.toArray(String[]::new));
    }

    public String out() {
        return out.toString();
    }

    public String err() {
        return err.toString();
    }

    /// The lines that were written out, each of them JSON.
    public List<JsonNode> lines() throws IOException {
        List<JsonNode> lines = new ArrayList<>();
        for (String line : out().lines().toList()) {
            lines.add(JSON.readTree(line));
        }
        return lines;
    }
}
