@echo off
rem Starts the program from the folder it was unpacked into. Needs Java 17 or later on the path.
setlocal
set "TOELINE_DIR=%~dp0"
where java >nul 2>nul || (echo toeline needs Java 17 or later on the path 1>&2 & exit /b 1)
java "-Dtoeline.home=%TOELINE_DIR%." -Dfile.encoding=UTF-8 -XX:+UseSerialGC -cp "%TOELINE_DIR%toeline.jar;%TOELINE_DIR%lib\*" org.toeline.Main %*
exit /b %errorlevel%
