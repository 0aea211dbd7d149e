package tamabako.bench.room;

import tamabako.desk.room.live.Live;
import tamabako.desk.room.page.RoomPages;

/// What the desk's own server needs beside the rooms.
record DeskParts(RoomPages pages, Live live) {}
