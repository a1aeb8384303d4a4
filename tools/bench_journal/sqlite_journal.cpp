#include "tools/bench_journal/sqlite_journal.h"

#include <sqlite3.h>

#include <chrono>
#include <string>

#include "engine/require.h"

namespace hemline {
namespace {

using Clock = std::chrono::steady_clock;

double ms_since(Clock::time_point begun) {
    return std::chrono::duration<double, std::milli>(Clock::now() - begun).count();
}

class Database {
  public:
    explicit Database(const std::filesystem::path& file) {
        require(sqlite3_open(file.c_str(), &db_) == SQLITE_OK, "sqlite opens");
        say("PRAGMA journal_mode=WAL; PRAGMA synchronous=FULL;"
            "CREATE TABLE IF NOT EXISTS event(frame BLOB PRIMARY KEY) WITHOUT ROWID;"
            "CREATE TABLE IF NOT EXISTS log(id INTEGER PRIMARY KEY, frame BLOB)");
        require(sqlite3_prepare_v2(db_, "INSERT INTO log(frame) VALUES(?)", -1, &insert_,
                                   nullptr) == SQLITE_OK,
                "sqlite prepares");
    }
    Database(const Database&) = delete;
    Database& operator=(const Database&) = delete;
    ~Database() {
        sqlite3_finalize(insert_);
        sqlite3_close(db_);
    }
    void say(const std::string& sql) {
        require(sqlite3_exec(db_, sql.c_str(), nullptr, nullptr, nullptr) == SQLITE_OK,
                "sqlite does as it is told");
    }
    void insert(const Bytes& frame) {
        sqlite3_bind_blob(insert_, 1, frame.data(), static_cast<int>(frame.size()), SQLITE_STATIC);
        require(sqlite3_step(insert_) == SQLITE_DONE, "sqlite inserts");
        sqlite3_reset(insert_);
    }
    std::size_t read_all() {
        sqlite3_stmt* select = nullptr;
        sqlite3_prepare_v2(db_, "SELECT frame FROM log ORDER BY id", -1, &select, nullptr);
        std::size_t bytes = 0;
        while (sqlite3_step(select) == SQLITE_ROW) {
            bytes += static_cast<std::size_t>(sqlite3_column_bytes(select, 0));
        }
        sqlite3_finalize(select);
        return bytes;
    }

  private:
    sqlite3* db_ = nullptr;
    sqlite3_stmt* insert_ = nullptr;
};

void fill(Database& database, const std::vector<Bytes>& frames) {
    database.say("BEGIN");
    for (const Bytes& frame : frames) {
        database.insert(frame);
    }
    database.say("COMMIT");
}

}  // namespace

std::vector<double> commit_in_sqlite(const std::filesystem::path& file,
                                     const std::vector<Bytes>& frames) {
    Database database(file);
    std::vector<double> ms;
    for (const Bytes& frame : frames) {
        const auto begun = Clock::now();
        database.insert(frame);
        ms.push_back(ms_since(begun));
    }
    return ms;
}

double read_from_sqlite(const std::filesystem::path& file, const std::vector<Bytes>& frames) {
    {
        Database database(file);
        fill(database, frames);
    }
    const auto begun = Clock::now();
    Database database(file);
    require(database.read_all() > 0, "rows are read");
    return ms_since(begun);
}

double merge_in_sqlite(const std::filesystem::path& folder,
                       const std::vector<std::vector<Bytes>>& journals) {
    std::string take;
    for (std::size_t i = 0; i < journals.size(); ++i) {
        const std::string file = (folder / ("part" + std::to_string(i) + ".db")).string();
        Database part(file);
        fill(part, journals[i]);
        take += "ATTACH '" + file + "' AS part" + std::to_string(i) + ";";
    }
    Database whole(folder / "whole.db");
    const auto begun = Clock::now();
    whole.say(take);
    whole.say("BEGIN");
    for (std::size_t i = 0; i < journals.size(); ++i) {
        whole.say("INSERT OR IGNORE INTO event SELECT frame FROM part" + std::to_string(i) +
                  ".log");
    }
    whole.say("COMMIT");
    return ms_since(begun);
}

}  // namespace hemline
