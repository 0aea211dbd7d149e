package tamabako.records;

import java.time.Instant;

/// That someone is signed in at one browser.
///
/// @param id opaque, and no secret
/// @param token the SHA-256 of the token that the browser carries
/// @param teacherId who is signed in
/// @param address the network address where they signed in
/// @param begunAt when they signed in
/// @param seenAt when the browser was seen last
public record SignIn(
        String id,
        String token,
        String teacherId,
        String address,
        Instant begunAt,
        Instant seenAt) {}
