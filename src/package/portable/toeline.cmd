@echo off
rem Starts the program from the folder it was unpacked into. Needs Java 17 or later on the path.
setlocal
set "TOELINE_DIR=%~dp0"
for %%J in (java.exe) do if not "%%~$PATH:J"=="" goto found
>&2 echo toeline needs Java 17 or later on the path
exit /b 1
:found
java "-Dtoeline.home=%TOELINE_DIR%." -Dfile.encoding=UTF-8 -XX:+UseSerialGC %TOELINE_JAVA_OPTIONS% -cp "%TOELINE_DIR%toeline.jar;%TOELINE_DIR%lib\*" org.toeline.Main %*
exit /b %errorlevel%
