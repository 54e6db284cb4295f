/*
 * Loaded in front of the C library (LD_PRELOAD): before and after every call that writes below the folder TOELINE_WATCHED, that folder is
 * copied to TOELINE_COPIES/NUMBER, as a program killed there would leave it. What is mapped into memory is not seen; of the
 * ledger that is the index of its log alone, which no program trusts after a crash.
 * Counting begins when the file TOELINE_COPIES/go is there. Linux, gcc -shared -fPIC.
 */
#define _GNU_SOURCE
#include <dirent.h>
#include <dlfcn.h>
#include <fcntl.h>
#include <limits.h>
#include <pthread.h>
#include <stdarg.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>
#include <sys/sendfile.h>
#include <sys/types.h>
#include <unistd.h>

static pthread_mutex_t lock = PTHREAD_MUTEX_INITIALIZER;
static __thread int inside;
static int number;

#define REAL(name) ((__typeof__(&name)) dlsym(RTLD_NEXT, #name))

static void copy_file(const char *from, const char *to) {
  char block[65536];
  int in = REAL(open64)(from, O_RDONLY);
  int out = REAL(open64)(to, O_WRONLY | O_CREAT | O_TRUNC, 0600);
  if (in < 0 || out < 0) { if (in >= 0) close(in); if (out >= 0) close(out); return; }
  for (ssize_t n; (n = read(in, block, sizeof block)) > 0;) if (REAL(write)(out, block, n) != n) abort();
  close(in);
  close(out);
}

static void copy_folder(const char *from, const char *to) {
  REAL(mkdir)(to, 0700);
  DIR *folder = opendir(from);
  if (!folder) return;
  for (struct dirent *e; (e = readdir(folder));) {
    if (!strcmp(e->d_name, ".") || !strcmp(e->d_name, "..")) continue;
    size_t length = strlen(e->d_name);
    if (length > 4 && !strcmp(e->d_name + length - 4, "-shm")) continue;
    char a[PATH_MAX], b[PATH_MAX];
    snprintf(a, sizeof a, "%s/%s", from, e->d_name);
    snprintf(b, sizeof b, "%s/%s", to, e->d_name);
    struct stat s;
    if (lstat(a, &s)) continue;
    if (S_ISDIR(s.st_mode)) copy_folder(a, b); else if (S_ISREG(s.st_mode)) copy_file(a, b);
  }
  closedir(folder);
}

static void snapshot(void) {
  const char *watched = getenv("TOELINE_WATCHED"), *copies = getenv("TOELINE_COPIES");
  char path[PATH_MAX];
  snprintf(path, sizeof path, "%s/go", copies);
  if (access(path, F_OK)) return;
  pthread_mutex_lock(&lock);
  snprintf(path, sizeof path, "%s/%05d", copies, number++);
  copy_folder(watched, path);
  pthread_mutex_unlock(&lock);
}

static int below(const char *path) {
  const char *watched = getenv("TOELINE_WATCHED");
  size_t length = watched ? strlen(watched) : 0;
  if (!length || !path || strncmp(path, watched, length)) return 0;
  size_t n = strlen(path);
  return n < 4 || strcmp(path + n - 4, "-shm");
}

static int below_fd(int fd) {
  char link[64], path[PATH_MAX];
  snprintf(link, sizeof link, "/proc/self/fd/%d", fd);
  ssize_t n = readlink(link, path, sizeof path - 1);
  if (n <= 0) return 0;
  path[n] = 0;
  return below(path);
}

#define AROUND(watched, call) \
  if (inside || !(watched)) return call; \
  inside = 1; snapshot(); \
  __typeof__(call) done = call; \
  snapshot(); inside = 0; return done;

ssize_t write(int fd, const void *b, size_t n) { AROUND(below_fd(fd), REAL(write)(fd, b, n)) }
ssize_t pwrite(int fd, const void *b, size_t n, off_t at) { AROUND(below_fd(fd), REAL(pwrite)(fd, b, n, at)) }
ssize_t pwrite64(int fd, const void *b, size_t n, off64_t at) { AROUND(below_fd(fd), REAL(pwrite64)(fd, b, n, at)) }
int ftruncate(int fd, off_t n) { AROUND(below_fd(fd), REAL(ftruncate)(fd, n)) }
int ftruncate64(int fd, off64_t n) { AROUND(below_fd(fd), REAL(ftruncate64)(fd, n)) }
ssize_t sendfile(int out, int in, off_t *at, size_t n) { AROUND(below_fd(out), REAL(sendfile)(out, in, at, n)) }
ssize_t sendfile64(int out, int in, off64_t *at, size_t n) { AROUND(below_fd(out), REAL(sendfile64)(out, in, at, n)) }
ssize_t copy_file_range(int in, off64_t *a, int out, off64_t *b, size_t n, unsigned f) {
  AROUND(below_fd(out), REAL(copy_file_range)(in, a, out, b, n, f))
}
int rename(const char *a, const char *b) { AROUND(below(a) || below(b), REAL(rename)(a, b)) }
int link(const char *a, const char *b) { AROUND(below(b), REAL(link)(a, b)) }
int unlink(const char *a) { AROUND(below(a), REAL(unlink)(a)) }
int rmdir(const char *a) { AROUND(below(a), REAL(rmdir)(a)) }
int mkdir(const char *a, mode_t m) { AROUND(below(a), REAL(mkdir)(a, m)) }
/* relative to an open folder: how Java takes a tree away */
int unlinkat(int fd, const char *a, int f) { AROUND(below(a) || below_fd(fd), REAL(unlinkat)(fd, a, f)) }

#define MODE va_list more; va_start(more, flags); mode_t mode = flags & O_CREAT ? va_arg(more, mode_t) : 0; va_end(more);
#define MAKES (flags & (O_CREAT | O_TRUNC))
int open(const char *a, int flags, ...) { MODE AROUND(MAKES && below(a), REAL(open)(a, flags, mode)) }
int open64(const char *a, int flags, ...) { MODE AROUND(MAKES && below(a), REAL(open64)(a, flags, mode)) }
