package tamabako.desk.account;

import ch.qos.logback.classic.Level;
import ch.qos.logback.classic.Logger;
import ch.qos.logback.classic.spi.ILoggingEvent;
import ch.qos.logback.core.read.ListAppender;
import java.util.List;
import org.slf4j.LoggerFactory;

/// Hears what is logged under a name.
final class Heard implements AutoCloseable {

    private final Logger logger;
    private final ListAppender<ILoggingEvent> lines = new ListAppender<>();

    Heard(String name) {
        logger = (Logger) LoggerFactory.getLogger(name);
        lines.start();
        logger.addAppender(lines);
    }

    List<String> lines(Level level) {
        return List.copyOf(lines.list).stream()
                .filter(line -> line.getLevel().equals(level))
                .map(ILoggingEvent::getFormattedMessage)
                .toList();
    }

    List<String> all() {
        return List.copyOf(lines.list).stream().map(ILoggingEvent::getFormattedMessage).toList();
    }

    @Override
    public void close() {
        logger.detachAppender(lines);
    }
}
